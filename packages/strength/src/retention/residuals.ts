/** Every test of a stock against the value that its model expects, by state. */

import type { LineStock } from "@secondline/rig";
import { observationPlace } from "@secondline/statistics";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { combineFactors, type LognormalStrength } from "../derating/lognormal.ts";
import { factorOf, meanDoses, statesTogether, stateText } from "./stockComparison.ts";
import { stockModel } from "./stockModel.ts";
import { type StockFactors, testedFactors } from "./testedStock.ts";
import { builtInLog, type WearDose } from "./wearFactors.ts";

export interface TestResidual {
  readonly test: BreakTest;
  /** Central value that the model gives a sample of these doses [N]. */
  readonly expected: number;
  /** Strength of the test over that value; a bound at its bound, an interval at its middle [-]. */
  readonly over: number;
}

export interface StateResiduals {
  /** "new", or the wear of the samples. */
  readonly state: string;
  readonly tests: readonly TestResidual[];
  /** Range in which 18 of 20 further samples of the state are expected, over the central value [-]. */
  readonly band: readonly [low: number, high: number];
  /** Value that the built-in factors give without tests, over the central value [-]. */
  readonly builtIn: number;
}

export interface StockResiduals {
  readonly stock: { readonly id: string; readonly name: string };
  readonly states: readonly StateResiduals[];
}

/** Undefined when no test counts for the stock. */
export function stockResiduals(stock: LineStock, tests: readonly BreakTest[]): StockResiduals | undefined {
  const model = stockModel(stock, tests);
  if (model === undefined) return undefined;
  const factors = testedFactors(stock, model);
  const states = statesTogether(model).map((states): StateResiduals => {
    const wears = meanDoses(states);
    const { strength, strength5, strength95 } = countsFor(stock, factors, wears);
    return {
      state: stateText(wears),
      tests: states.flatMap(({ doses, tests }) => {
        const expected = countsFor(stock, factors, doses).strength;
        return tests.map((test) => ({ test, expected, over: observationPlace(test.result) / expected }));
      }),
      band: [strength5 / strength, strength95 / strength],
      builtIn: (stock.rated.strength * Math.exp(builtInLog(stock, wears))) / strength,
    };
  });
  return { stock: { id: stock.id, name: stock.name }, states };
}

function countsFor(stock: LineStock, factors: StockFactors, wears: readonly WearDose[]): LognormalStrength {
  return combineFactors(stock.rated.strength, [factors.level(), ...wears.map((wear) => factorOf(factors, wear))]);
}
