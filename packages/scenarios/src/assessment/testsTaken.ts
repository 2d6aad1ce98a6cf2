/** Which break tests say something of a rig's webbings and ropes. */
import type { LineStock, Rig } from "@secondline/rig";
import { type BreakTest, useOfTest as testUse, testUseWords } from "@secondline/strength";

export interface TestsTaken {
  readonly count: number;
  readonly notes: readonly string[];
}

export function testsTaken({ main, backup, leash }: Rig, tests: readonly BreakTest[]): TestsTaken {
  if (tests.length === 0) return { count: 0, notes: [] };
  const all = [...main.sections, ...(backup?.sections ?? [])].map(({ stock }) => stock);
  const stocks = [...new Map([...all, leash.stock].map((stock) => [stock.id, stock])).values()];
  const count = tests.filter((test) => stocks.some((stock) => counts(test, stock))).length;
  return { count, notes: testUseWords(stocks, tests) };
}

const counts = (test: BreakTest, stock: LineStock): boolean =>
  (test.material === stock.id || test.material === stock.name) && typeof testUse(test, stock) === "object";
