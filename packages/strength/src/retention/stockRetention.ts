/** Curves of a stock over the dose of each wear, from the tests that have that wear alone. */
import type { LineStock } from "@secondline/rig";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { beginsNew, type Retention, type RetentionTest, retention } from "./retention.ts";
import { stockModel } from "./stockModel.ts";
import { testsOfStock } from "./testState.ts";
import { lastDose, type WearId } from "./wearFactors.ts";

/** A wear without a dose, or without tests of its own, is left out. */
export type StockRetention = Partial<Readonly<Record<WearId, Retention>>>;

export function stockRetention(stock: LineStock, tests: readonly BreakTest[]): StockRetention {
  const news: RetentionTest[] = [];
  const alone = new Map<WearId, RetentionTest[]>();
  for (const { use, tests: alike } of testsOfStock(tests, stock)) {
    if (typeof use === "string" || use.length > 1) continue;
    const [only] = use;
    if (only === undefined) {
      for (const test of alike) news.push({ dose: 0, test });
    } else if (lastDose(stock, only.id) > 0) {
      const own = alone.get(only.id) ?? [];
      alone.set(only.id, own);
      for (const test of alike) own.push({ dose: only.dose, test });
    }
  }
  if (alone.size === 0) return {};
  const model = stockModel(stock, tests);
  return Object.fromEntries(
    [...alone].map(([id, own]) => [id, retention(stock, id, model, beginsNew(id) ? [...news, ...own] : own)]),
  );
}
