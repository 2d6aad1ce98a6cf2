/** Probabilities in words that do not look more exact than they are. */
import type { Probability } from "@secondline/scenarios";
import type { Say } from "./language.ts";
import { groupedDigits, percent } from "./quantity.ts";

/** Chances smaller than this are not told apart: the spreads they rest on are not known that far out [-]. */
export const SMALLEST_CHANCE = 1e-6;

/** Tolerance of rounding: without it 2.3, which is 22.999… tenths, would read 2.2 [-]. */
const ROUNDING_SLACK = 1e-9;

/**
 * "62 %", "0.4 %", "1 in 23 000", "less than 1 in a million". A chance is never shown smaller than it is; `side`: "down" for the lower
 * end of an interval, which is never shown larger.
 */
export function chance(say: Say, value: number, side: "up" | "down" = "up"): string {
  if (value < SMALLEST_CHANCE) return say("chance.tiny");
  if (value < 0.001) return say("chance.oneIn", { number: groupedDigits(oneIn(value, side)) });
  if (value >= 1) return say("chance.all");
  return value > 0.99 + ROUNDING_SLACK ? say("chance.over99") : percent(value, side);
}

/** To two digits: the larger the number, the smaller the chance. */
function oneIn(value: number, side: "up" | "down"): number {
  const step = 10 ** (Math.floor(Math.log10(1 / value)) - 1);
  const count = 1 / value / step;
  return step * (side === "up" ? Math.floor(count + ROUNDING_SLACK) : Math.ceil(count - ROUNDING_SLACK));
}

/** The lower end of an interval is not told if it is less than this share of the value [-]. */
const LEAST_LOW_SHARE = 0.01;

/** "62 % (60 to 64 %)"; a chance close to never as "less than" its bound. */
export function chanceRange(say: Say, { value, low, high }: Probability): string {
  if (value <= 0) return atMost(say, high);
  const [from, to] = [chance(say, low, "down"), chance(say, high)];
  if (from === to) return chance(say, value);
  if (low < LEAST_LOW_SHARE * value) return say("chance.upTo", { value: chance(say, value), high: to });
  return say("chance.range", { value: chance(say, value), range: chanceSpan(say, low, high) });
}

/** "60 to 64 %". */
export function chanceSpan(say: Say, low: number, high: number): string {
  const [from, to] = [chance(say, low, "down"), chance(say, high)];
  const shared = from.endsWith(" %") && to.endsWith(" %") && low <= 0.99 && low >= 0.001;
  return say("chance.span", { low: shared ? from.slice(0, -2) : from, high: to });
}

const atMost = (say: Say, bound: number): string =>
  bound < SMALLEST_CHANCE ? chance(say, bound) : say("chance.below", { bound: chance(say, bound) });
