/** Anderson–Darling tests: does a family fit a complete sample, and may batches be pooled? */
import { FAMILIES, type FamilyName, type LocationScale } from "./family.ts";

/** How well a family fits a sample. */
export interface GoodnessOfFit {
  /** A² without small-sample correction [-]. */
  readonly statistic: number;
  /** Observed significance level: below 0.05 the family does not fit [-]. */
  readonly significance: number;
}

/** Test of a family with both parameters estimated from the sample (CMH-17-1G, section 8.3.4.1). */
export function andersonDarling(values: readonly number[], name: FamilyName, shape: LocationScale): GoodnessOfFit {
  const family = FAMILIES[name];
  const n = values.length;
  const z = [...values]
    .sort((a, b) => a - b)
    .map((x) => ((family.logarithmic ? Math.log(x) : x) - shape.location) / Math.exp(shape.logScale));
  let sum = 0;
  for (let i = 0; i < n; i++) sum += (2 * i + 1) * (family.logCdf(z[i]!) + family.logSurvival(z[n - 1 - i]!));
  const statistic = -n - sum / n;
  return { statistic, significance: significance(statistic, n, name) };
}

function significance(statistic: number, n: number, name: FamilyName): number {
  const weibull = name === "weibull";
  const corrected = statistic * (weibull ? 1 + 0.2 / Math.sqrt(n) : 1 + 4 / n - 25 / (n * n));
  if (corrected <= 0) return 1;
  const exponent = weibull
    ? -0.1 + 1.24 * Math.log(corrected) + 4.48 * corrected
    : -0.48 + 0.78 * Math.log(corrected) + 4.58 * corrected;
  return 1 / (1 + Math.exp(exponent));
}

/** Whether batches may be one population. */
export interface Poolability {
  /** Standardised k-sample statistic [-]. */
  readonly statistic: number;
  /** Critical value at 5 % [-]. */
  readonly critical: number;
  /** False when the batches differ. */
  readonly poolable: boolean;
}

/**
 * k-sample Anderson–Darling test with mid-ranks (F. W. Scholz & M. A. Stephens, J. Am. Stat. Assoc. 82 (1987) 918–924).
 * Needs two batches or more, each with two values or more, and not all values equal.
 */
export function batchesPoolable(batches: readonly (readonly number[])[]): Poolability {
  const k = batches.length;
  const all = batches.flat().sort((a, b) => a - b);
  const total = all.length;
  if (k < 2 || batches.some((b) => b.length < 2))
    throw new Error("comparing batches needs two of them, each with two values");
  const levels = [...new Set(all)].sort((a, b) => a - b);
  if (levels.length < 2) throw new Error("comparing batches needs values that differ");
  let sum = 0;
  for (const batch of batches) sum += batchSum(batch, all, levels) / batch.length;
  const raw = ((total - 1) / total) * sum;
  const statistic = (raw - (k - 1)) / Math.sqrt(variance(batches.map((b) => b.length)));
  const m = k - 1;
  const critical = 1.645 + 0.678 / Math.sqrt(m) - 0.362 / m;
  return { statistic, critical, poolable: statistic <= critical };
}

/** `all` and `levels`, its different values, ascending. */
function batchSum(batch: readonly number[], all: readonly number[], levels: readonly number[]): number {
  const total = all.length;
  const sorted = [...batch].sort((a, b) => a - b);
  let [sum, at, ownAt] = [0, 0, 0];
  for (const level of levels) {
    const [first, ownFirst] = [at, ownAt];
    while (at < total && all[at] === level) at++;
    while (ownAt < sorted.length && sorted[ownAt] === level) ownAt++;
    const ties = at - first;
    const below = first + ties / 2;
    const ownBelow = ownFirst + (ownAt - ownFirst) / 2;
    const weight = below * (total - below) - (total * ties) / 4;
    sum += ((ties / total) * (total * ownBelow - batch.length * below) ** 2) / weight;
  }
  return sum;
}

/** Variance of the statistic under equal batches (Scholz & Stephens, eq. 4). */
function variance(sizes: readonly number[]): number {
  const k = sizes.length;
  const n = sizes.reduce((a, b) => a + b, 0);
  const bigH = sizes.reduce((s, size) => s + 1 / size, 0);
  let h = 0;
  for (let i = 1; i < n; i++) h += 1 / i;
  let g = 0;
  let inner = 0;
  // g = Σ_{i=1}^{n−2} 1/(n−i) Σ_{j=i+1}^{n−1} 1/j, the inner sum built from the top.
  for (let i = n - 2; i >= 1; i--) {
    inner += 1 / (i + 1);
    g += inner / (n - i);
  }
  const a = (4 * g - 6) * (k - 1) + (10 - 6 * g) * bigH;
  const b = (2 * g - 4) * k * k + 8 * h * k + (2 * g - 14 * h - 4) * bigH - 8 * h + 4 * g - 6;
  const c = (6 * h + 2 * g - 2) * k * k + (4 * h - 4 * g + 6) * k + (2 * h - 6) * bigH + 4 * h;
  const d = (2 * h + 6) * k * k - 4 * h * k;
  return (a * n ** 3 + b * n ** 2 + c * n + d) / ((n - 1) * (n - 2) * (n - 3));
}
