/** Lower bounds of a quantile from a complete sample. */
import { mean, standardDeviation } from "./observation.ts";
import { toleranceFactor } from "./tolerance.ts";

/**
 * Value that the share `content` of a normal population exceeds, with `confidence`; undefined below two values.
 * May be negative for two or three scattered values: then the sample says nothing.
 */
export function normalLowerBound(values: readonly number[], content: number, confidence: number): number | undefined {
  const s = standardDeviation(values);
  return s === undefined ? undefined : mean(values) - toleranceFactor(values.length, content, confidence) * s;
}

/** The same for a lognormal population. */
export function lognormalLowerBound(
  values: readonly number[],
  content: number,
  confidence: number,
): number | undefined {
  const bound = normalLowerBound(values.map(Math.log), content, confidence);
  return bound === undefined ? undefined : Math.exp(bound);
}
