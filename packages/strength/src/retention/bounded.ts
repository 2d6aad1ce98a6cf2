/** The strength to be expected of a test that gives only a bound. */
import { normalDensity, normalTail } from "@secondline/statistics";
import type { BreakTest } from "../breakLog/logEntry.ts";

/** A piece that broke below a load: a test without a least load. */
export const isBelow = ({ result }: BreakTest): boolean => result.kind === "below";

/** The mean to be expected of a result that is only bounded, and the share of a breaking load's information in it. */
export function beyondBound(test: BreakTest, centre: number, deviation: number, offset: number) {
  const { result } = test;
  const z = (load: number) => (Math.log(load) - offset - centre) / deviation;
  if (result.kind === "above") return truncatedNormal(centre, deviation, z(result.value), Number.POSITIVE_INFINITY);
  if (result.kind === "below") return truncatedNormal(centre, deviation, Number.NEGATIVE_INFINITY, z(result.value));
  if (result.kind === "between") return truncatedNormal(centre, deviation, z(result.from), z(result.to));
  return { mean: z(result.value) * deviation + centre, kept: 1 };
}

/** Mean of a normal deviate between two bounds, and 1 less its variance ratio (Tallis 1961). */
function truncatedNormal(centre: number, deviation: number, low: number, high: number) {
  // Far out in a tail the mean lies at the nearer bound, to within rounding.
  if (low > 8) return { mean: centre + deviation * Math.min(low + 1 / low, high), kept: 1 };
  if (high < -8) return { mean: centre + deviation * Math.max(high + 1 / high, low), kept: 1 };
  // Below the middle, takes the tails of the other side: the difference of two numbers near 1 has no digits left.
  const share = high < 0 ? normalTail(-high) - normalTail(-low) : normalTail(low) - normalTail(high);
  const area = Math.max(1e-300, share);
  const [a, b] = [normalDensity(low), normalDensity(high)];
  const [la, hb] = [Number.isFinite(low) ? low * a : 0, Number.isFinite(high) ? high * b : 0];
  const mean = (a - b) / area;
  const variance = 1 + (la - hb) / area - mean * mean;
  return { mean: centre + deviation * mean, kept: Math.min(1, Math.max(0, 1 - variance)) };
}
