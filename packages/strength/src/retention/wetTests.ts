/**
 * Tests that were pulled wet. Wet has a factor of its own, which no test feeds. But a wet piece that held less than the
 * built-in value for wet limits the credit of such pieces. The limit lowers a dry rig too: nobody knows that the wet alone was
 * to blame. See STATISTICS.md, "Own tests of a stock".
 */
import type { LineStock } from "@secondline/rig";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { logSpread } from "../derating/lognormal.ts";
import { wetFactor } from "../derating/wet.ts";
import { BAND_DEVIATIONS, NEW_SCATTER } from "./stockScatter.ts";
import { testsOfStock } from "./testState.ts";
import { builtInLog, builtInSpread, type WearDose } from "./wearFactors.ts";

/** Most strength of a piece with these wears, or with more, over the built-in value; below 0, in the logarithm [-]. */
export interface WetLimit {
  readonly doses: readonly WearDose[];
  readonly most: number;
}

export function wetLimits(stock: LineStock, tests: readonly BreakTest[]): WetLimit[] {
  const { value, spread } = wetFactor(stock.fibre);
  return testsOfStock(tests, stock).flatMap(({ use, wet: doses, tests: alike }): WetLimit[] => {
    if (use !== "wet" || doses === undefined) return [];
    const { common, own } = builtInSpread(stock, doses);
    const offset = Math.log(stock.rated.strength * value) + builtInLog(stock, doses);
    const held = alike.flatMap((test) => mostHeld(test)).map((load) => Math.log(load) - offset);
    if (held.length === 0) return [];
    const mean = held.reduce((sum, x) => sum + x, 0) / held.length;
    const error = (NEW_SCATTER ** 2 + own + logSpread(spread) ** 2) / held.length;
    // Below the built-in band the mean governs as it is, else with its error.
    const outside = mean < -BAND_DEVIATIONS * Math.sqrt(common + NEW_SCATTER ** 2 + error);
    const most = outside ? mean : mean + Math.sqrt(error);
    return most < 0 ? [{ doses, most }] : [];
  });
}

/** The largest load that a piece can have held; none for a piece that did not break. */
function mostHeld({ result }: BreakTest): readonly number[] {
  switch (result.kind) {
    case "exact":
    case "below":
      return [result.value];
    case "between":
      return [result.to];
    case "above":
      return [];
  }
}
