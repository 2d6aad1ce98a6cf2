/** Quantiles of a family's standard deviate with a normal scatter of its location. */
import { FAMILIES, type FamilyName } from "./family.ts";
import { findRoot } from "./findRoot.ts";
import { normalDensity } from "./normal.ts";

/** Ratios are tabled evenly in their inverse hyperbolic sine: linear about 0, logarithmic far out. */
const RATIO_STEP = 0.1;
const QUANTILE_TABLES = new Map<string, number[]>();

/** Quantile p of Z + ratio·N, Z of the family and N standard normal [-]. */
export function mixedQuantile(name: FamilyName, p: number, ratio: number): number {
  const family = FAMILIES[name];
  if (ratio === 0) return family.quantile(p);
  if (name !== "weibull") return family.quantile(p) * Math.hypot(1, ratio);
  const place = Math.asinh(ratio) / RATIO_STEP;
  const i = Math.floor(place);
  const share = place - i;
  // Over the ratio the quantile nears a line, so it is tabled as a share of that of a normal deviate.
  const value = (1 - share) * tabledQuantile(p, i) + share * tabledQuantile(p, i + 1);
  return value * Math.hypot(1, ratio);
}

function tabledQuantile(p: number, i: number): number {
  const key = String(p);
  const table = QUANTILE_TABLES.get(key) ?? [];
  QUANTILE_TABLES.set(key, table);
  const known = table[i];
  if (known !== undefined) return known;
  const ratio = Math.sinh(i * RATIO_STEP);
  const value = weibullWithScatter(p, ratio) / Math.hypot(1, ratio);
  table[i] = value;
  return value;
}

function weibullWithScatter(p: number, ratio: number): number {
  const { logCdf, quantile } = FAMILIES.weibull;
  if (ratio === 0) return quantile(p);
  const below = (q: number) => {
    let [sum, total] = [0, 0];
    // The normal deviate runs in even steps: for such integrands the trapezium rule is exact to rounding if the step is fine
    // enough.
    const points = 161;
    for (let k = 0; k < points; k++) {
      const n = -8 + (16 * k) / (points - 1);
      const w = normalDensity(n);
      sum += w * Math.exp(logCdf(q - ratio * n));
      total += w;
    }
    return sum / total - p;
  };
  const reach = Math.hypot(1, ratio);
  return findRoot(below, -12 * reach - 12, 12 * reach + 12, 1e-9);
}
