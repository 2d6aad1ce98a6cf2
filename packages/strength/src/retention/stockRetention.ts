/** Curves of a stock over sun and over falls, from the tests that have that cause alone. */
import type { LineStock } from "@secondline/rig";
import type { BreakTest } from "../breakLog/breakTest.ts";
import { type Retention, retention } from "./retention.ts";
import { stockModel } from "./stockModel.ts";
import { isOfStock, wearOfTest } from "./testState.ts";

/** A cause without tests of its own is left out. */
export interface StockRetention {
  readonly sun?: Retention;
  readonly falls?: Retention;
}

export function stockRetention(stock: LineStock, tests: readonly BreakTest[]): StockRetention {
  const model = stockModel(stock, tests);
  const points = (kind: "sun" | "falls") =>
    tests.flatMap((test) => {
      const doses = isOfStock(test, stock) ? wearOfTest(test, stock) : "no dose";
      if (typeof doses === "string" || test.result.kind !== "exact") return [];
      if (doses.length === 0) return [{ dose: 0, strength: test.result.value }];
      const [only] = doses;
      return doses.length === 1 && only?.id === kind ? [{ dose: only.dose, strength: test.result.value }] : [];
    });
  const [sun, falls] = [points("sun"), points("falls")];
  const has = (list: typeof sun) => list.some(({ dose }) => dose > 0);
  return {
    ...(has(sun) ? { sun: retention(stock, { kind: "sun", fibre: stock.fibre }, model, sun) } : {}),
    ...(has(falls) ? { falls: retention(stock, { kind: "falls" }, model, falls) } : {}),
  };
}
