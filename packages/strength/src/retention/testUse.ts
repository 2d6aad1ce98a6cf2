/** What a log does for a rig's webbings and ropes, in sentences. */
import type { LineStock } from "@secondline/rig";
import { alikeTests } from "../breakLog/alikeTests.ts";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { isOfStock, type NotUsed, testsOfStock, wearOfTest } from "./testState.ts";
import type { WearDose } from "./wearFactors.ts";
import { wetLimits } from "./wetTests.ts";

/** What a test counts for (nothing for a new piece, which tells the level), or why it does not count. */
export type TestUse = { readonly wears: readonly WearDose[] } | NotUsed;

export function useOfTest(test: BreakTest, stock: LineStock): TestUse {
  const doses = wearOfTest(test, stock);
  return typeof doses === "string" ? doses : { wears: doses };
}

const NOT_USED_WORDS: Readonly<Record<NotUsed, string>> = {
  wet: "pulled wet",
  "no dose": "without sun_months or falls",
  "no months": "with a clamp mark or stitching, without the months it had been there",
  "other wear": "weakened by something that no factor here describes, by the words for part and state",
  beyond: "with more sun, falls or months than the built-in factor covers",
};

/** None without tests. */
export function testUseWords(stocks: readonly LineStock[], tests: readonly BreakTest[]): string[] {
  if (tests.length === 0) return [];
  const known = [...new Map(stocks.map((stock) => [stock.id, stock])).values()];
  const counted: string[] = [];
  const left = new Map<string, number>();
  let used = 0;
  for (const stock of known) {
    const good = new Map<string, number>();
    let ofStock = 0;
    for (const { use, tests: alike } of testsOfStock(tests, stock)) {
      if (typeof use === "string") {
        left.set(NOT_USED_WORDS[use], (left.get(NOT_USED_WORDS[use]) ?? 0) + alike.length);
        continue;
      }
      ofStock += alike.length;
      for (const cause of causesOf(use)) good.set(cause, (good.get(cause) ?? 0) + alike.length);
    }
    used += ofStock;
    const causes = [...good].map(([cause, number]) => `${number} ${cause}`);
    if (ofStock > 0) counted.push(`${stock.name} (${causes.join(", ")})`);
  }
  const foreign = alikeTests(tests).filter(({ sample }) => !known.some((stock) => isOfStock(sample, stock)));
  const materials = [...new Set(foreign.map(({ sample }) => `"${sample.material}"`))];
  const others = foreign.reduce((sum, { tests: alike }) => sum + alike.length, 0);
  if (others > 0) left.set(`of a material that this rig does not have: ${materials.join(", ")}`, others);
  const reasons = [...left].map(([why, number]) => `${number} ${why}`);
  const lowered = known.filter((stock) => wetLimits(stock, tests).length > 0).map(({ name }) => name);
  const without = lowered.length === 0 ? "; its strengths are those without a log" : "";
  const said = `Own break tests: ${used === 0 ? "none" : used} of ${tests.length} count towards this rig${used === 0 ? without : `, for ${counted.join(", ")}`}.`;
  return [
    said,
    ...(reasons.length > 0 ? [`Break tests that do not count: ${reasons.join("; ")}.`] : []),
    ...(lowered.length > 0
      ? [
          `Pieces pulled wet held less than is built in for wet ones, of ${lowered.join(" and ")}: no such piece is credited more, wet or dry. Pull some dry.`,
        ]
      : []),
  ];
}

/** "new", or "with sun", "with falls": a test with two causes counts for both. */
function causesOf(doses: readonly WearDose[]): readonly string[] {
  return doses.length === 0 ? ["new"] : doses.map(({ id }) => `with ${id}`);
}

/** How many tests of a log count for one of the stocks. */
export function countingTests(stocks: readonly LineStock[], tests: readonly BreakTest[]): number {
  const counts = (sample: BreakTest) =>
    stocks.some((stock) => isOfStock(sample, stock) && typeof wearOfTest(sample, stock) !== "string");
  return alikeTests(tests).reduce((sum, { sample, tests: alike }) => sum + (counts(sample) ? alike.length : 0), 0);
}
