/** The use of a log for a rig's webbings and ropes. */
import type { FactValue, LineStock } from "@secondline/rig";
import { alikeTests } from "../breakLog/alikeTests.ts";
import { copiesIn } from "../breakLog/copies.ts";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { type NoteFact, type NoteFacts, noteFact } from "../noteFacts.ts";
import { isOfStock, type NotUsed, testsOfStock, wearOfTest } from "./testState.ts";
import { type WearDose, wearName } from "./wearFactors.ts";
import { wetLimits } from "./wetTests.ts";

/** The wears for which a test counts (none for a new piece, which tells the level), or the reason why it does not count. */
export type TestUse = { readonly wears: readonly WearDose[] } | NotUsed;

export function useOfTest(test: BreakTest, stock: LineStock): TestUse {
  const doses = wearOfTest(test, stock);
  return typeof doses === "string" ? doses : { wears: doses };
}

const NOT_USED_CODES = {
  wet: "tests.wet",
  "no dose": "tests.noDose",
  "no months": "tests.noMonths",
  "other wear": "tests.otherWear",
  beyond: "tests.beyond",
} as const satisfies Record<NotUsed, keyof NoteFacts>;

/** None without tests. */
export function testUseWords(stocks: readonly LineStock[], tests: readonly BreakTest[]): NoteFact[] {
  if (tests.length === 0) return [];
  const known = [...new Map(stocks.map((stock) => [stock.id, stock])).values()];
  const counted: NoteFact[] = [];
  const left = new Map<NotUsed, number>();
  let used = 0;
  for (const stock of known) {
    const good = new Map<Cause, number>();
    let ofStock = 0;
    for (const { use, tests: alike } of testsOfStock(tests, stock)) {
      if (typeof use === "string") {
        left.set(use, (left.get(use) ?? 0) + alike.length);
        continue;
      }
      ofStock += alike.length;
      for (const cause of causesOf(use)) good.set(cause, (good.get(cause) ?? 0) + alike.length);
    }
    used += ofStock;
    const causes = [...good].map(([cause, number]) => causeFact(cause, number));
    if (ofStock > 0)
      counted.push(noteFact("tests.ofStock", { stock: { stock: stock.name }, causes: { list: causes } }));
  }
  const foreign = alikeTests(tests).filter(({ sample }) => !known.some((stock) => isOfStock(sample, stock)));
  const materials = [...new Set(foreign.map(({ sample }) => `"${sample.material}"`))];
  const others = foreign.reduce((sum, { tests: alike }) => sum + alike.length, 0);
  const reasons = [...left].map(([why, count]) => noteFact(NOT_USED_CODES[why], { count }) as NoteFact);
  if (others > 0) reasons.push(noteFact("tests.foreign", { count: others, materials: { list: materials } }));
  const lowered = known.filter((stock) => wetLimits(stock, tests).length > 0).map(({ name }) => ({ stock: name }));
  const all = tests.length;
  const copies = copiesIn(tests.filter((test) => known.some((stock) => isOfStock(test, stock))));
  return [
    used > 0
      ? noteFact("tests.use", { used, all, list: { list: counted } })
      : noteFact(lowered.length === 0 ? "tests.none" : "tests.noneButWet", { all }),
    ...(reasons.length > 0 ? [noteFact("tests.leftOut", { list: { list: reasons, joined: "semicolon" } })] : []),
    ...(copies > 0 ? [noteFact("tests.copies", { count: copies })] : []),
    ...(lowered.length > 0 ? [noteFact("tests.wetHeldLess", { stocks: { list: lowered, joined: "and" } })] : []),
  ];
}

/** "New", or the wears of the sample: a test with two wears counts for both. */
function causesOf(doses: readonly WearDose[]): readonly Cause[] {
  return doses.length === 0 ? ["new"] : doses.map(({ id }) => id);
}

type Cause = WearDose["id"] | "new";

const causeFact = (cause: Cause, count: number): FactValue =>
  cause === "new"
    ? noteFact("tests.new", { count })
    : noteFact("tests.with", { count, cause: { brought: wearName(cause) } });

/** How many tests of a log count for one of the stocks. */
export function countingTests(stocks: readonly LineStock[], tests: readonly BreakTest[]): number {
  const counts = (sample: BreakTest) =>
    stocks.some((stock) => isOfStock(sample, stock) && typeof wearOfTest(sample, stock) !== "string");
  return alikeTests(tests).reduce((sum, { sample, tests: alike }) => sum + (counts(sample) ? alike.length : 0), 0);
}
