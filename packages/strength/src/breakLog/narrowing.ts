/** What more tests would bring: where the characteristic value would come to lie if they scattered like those at hand. */

import { normalQuantile } from "../statistics/normal.ts";
import { mean, standardDeviation } from "../statistics/observation.ts";
import { toleranceFactor } from "../statistics/tolerance.ts";
import type { Characteristic } from "./characteristic.ts";

export interface Narrowing {
  /** Further tests; infinite: the best that testing could reach. */
  readonly more: number;
  /** Expected characteristic value [N]. */
  readonly value: number;
  /** Rise over the value at hand [N]. */
  readonly gain: number;
}

const STEPS = [1, 2, 3, 5, 10, 20] as const;

/**
 * `now`: the characteristic value at hand, whose family is kept: normal values, else logarithms. Empty for fewer than two
 * values or values without spread: then nothing is known of the scatter.
 */
export function narrowing(values: readonly number[], content: number, now: Characteristic): Narrowing[] {
  const scaled = now.family === "normal" ? values : values.map(Math.log);
  const s = standardDeviation(scaled);
  if (s === undefined || s === 0) return [];
  const m = mean(scaled);
  const at = (more: number, k: number): Narrowing => {
    const value = now.family === "normal" ? m - k * s : Math.exp(m - k * s);
    return { more, value, gain: value - now.value };
  };
  return [
    ...STEPS.map((more) => at(more, toleranceFactor(values.length + more, content, now.confidence))),
    at(Number.POSITIVE_INFINITY, normalQuantile(content)),
  ];
}
