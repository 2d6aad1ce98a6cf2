/** Probabilities in words that nobody takes for more than they are. */
import type { Probability } from "@secondline/scenarios";
import type { Say } from "./language.ts";
import { grouped } from "./quantity.ts";

/** Chances smaller than this are not told apart: the spreads they rest on are not known that far out [-]. */
export const SMALLEST_CHANCE = 1e-6;

/** "62 %", "0.4 %", "1 in 23 000", "less than 1 in a million". */
export function chance(say: Say, value: number): string {
  if (value < SMALLEST_CHANCE) return say("chance.tiny");
  if (value < 0.001) return say("chance.oneIn", { number: grouped(Number((1 / value).toPrecision(2))) });
  const percent = 100 * value;
  if (value >= 1) return say("chance.all");
  if (percent >= 99.5) return say("chance.over99");
  const number = percent < 9.95 ? Number(percent.toPrecision(percent < 0.995 ? 1 : 2)) : Math.round(percent);
  return say("chance.percent", { number });
}

/** An interval that begins so far below its value says nothing by its beginning [-]. */
const LEAST_LOW_SHARE = 0.01;

/** "62 % (60 to 64 %)"; a chance that next to never comes up, as "less than" its bound. */
export function chanceRange(say: Say, { value, low, high }: Probability): string {
  if (value <= 0) return atMost(say, high);
  const [from, to] = [chance(say, low), chance(say, high)];
  if (from === to) return chance(say, value);
  if (low < LEAST_LOW_SHARE * value) return say("chance.upTo", { value: chance(say, value), high: to });
  return say("chance.range", { value: chance(say, value), range: chanceSpan(say, low, high) });
}

/** "60 to 64 %". */
export function chanceSpan(say: Say, low: number, high: number): string {
  const [from, to] = [chance(say, low), chance(say, high)];
  const shared = from.endsWith(" %") && to.endsWith(" %") && low < 0.995 && low >= 0.001;
  return say("chance.span", { low: shared ? from.slice(0, -2) : from, high: to });
}

const atMost = (say: Say, bound: number): string =>
  bound < SMALLEST_CHANCE ? chance(say, bound) : say("chance.below", { bound: chance(say, bound) });
