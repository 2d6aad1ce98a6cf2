/** Curves of a stock over the dose of each wear, from the tests that have that wear alone. */
import type { LineStock } from "@secondline/rig";
import type { BreakTest } from "../breakLog/breakTest.ts";
import { beginsNew, type Retention, type RetentionTest, retention } from "./retention.ts";
import { stockModel } from "./stockModel.ts";
import { isOfStock, wearOfTest } from "./testState.ts";
import { lastDose, type WearId } from "./wearFactors.ts";

/** A wear without a dose, or without tests of its own, is left out. */
export type StockRetention = Partial<Readonly<Record<WearId, Retention>>>;

export function stockRetention(stock: LineStock, tests: readonly BreakTest[]): StockRetention {
  const news: RetentionTest[] = [];
  const alone = new Map<WearId, RetentionTest[]>();
  for (const test of tests) {
    const doses = isOfStock(test, stock) ? wearOfTest(test, stock) : "no dose";
    if (typeof doses === "string" || doses.length > 1) continue;
    const [only] = doses;
    if (only === undefined) news.push({ dose: 0, test });
    else if (lastDose(stock, only.id) > 0)
      alone.set(only.id, [...(alone.get(only.id) ?? []), { dose: only.dose, test }]);
  }
  if (alone.size === 0) return {};
  const model = stockModel(stock, tests);
  return Object.fromEntries(
    [...alone].map(([id, own]) => [id, retention(stock, id, model, beginsNew(id) ? [...news, ...own] : own)]),
  );
}
