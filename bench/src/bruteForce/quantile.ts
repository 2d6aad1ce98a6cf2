/** A 95 % value of fresh draws, with its standard error. */
import { seededRandom } from "@secondline/statistics";

/** E is what so many of the draws stay under [-]. */
export const BELOW_E = 0.95;
const RESAMPLES = 400;

export interface FreshValue {
  readonly value: number;
  /** By resampling the draws. */
  readonly error: number;
}

export function freshValue(values: readonly number[]): FreshValue {
  const sorted = Float64Array.from(values).sort();
  const random = seededRandom(sorted.length);
  const any = () => sorted[Math.floor(random.uniform() * sorted.length)]!;
  const again = Array.from({ length: RESAMPLES }, () => quantile(sorted.map(any).sort()));
  const mean = again.reduce((sum, one) => sum + one, 0) / RESAMPLES;
  const variance = again.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (RESAMPLES - 1);
  return { value: quantile(sorted), error: Math.sqrt(variance) };
}

/** Linear between order statistics. */
function quantile(sorted: Float64Array): number {
  const at = BELOW_E * (sorted.length - 1);
  const below = Math.floor(at);
  const next = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return sorted[below]! + (at - below) * (next - sorted[below]!);
}
