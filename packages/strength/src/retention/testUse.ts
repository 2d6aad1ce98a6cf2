/** What a log does for a rig's webbings and ropes, in sentences. */
import type { LineStock } from "@secondline/rig";
import type { BreakTest } from "../breakLog/breakTest.ts";
import { isOfStock, type NotUsed, wearOfTest } from "./testState.ts";
import type { WearDose } from "./wearFactors.ts";

/** What a test counts for (nothing for a new piece, which tells the level), or why it does not count. */
export type TestUse = { readonly wears: readonly WearDose[] } | NotUsed;

export function useOfTest(test: BreakTest, stock: LineStock): TestUse {
  const doses = wearOfTest(test, stock);
  return typeof doses === "string" ? doses : { wears: doses };
}

const WHY: Readonly<Record<NotUsed, string>> = {
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
    const uses = tests.filter((test) => isOfStock(test, stock)).map((test) => wearOfTest(test, stock));
    for (const use of uses) if (typeof use === "string") left.set(WHY[use], (left.get(WHY[use]) ?? 0) + 1);
    const good = uses.filter((use): use is readonly WearDose[] => typeof use !== "string");
    used += good.length;
    if (good.length > 0) counted.push(`${stock.name} (${causeWords(good)})`);
  }
  const foreign = tests.filter((test) => !known.some((stock) => isOfStock(test, stock)));
  const materials = [...new Set(foreign.map(({ material }) => `"${material}"`))];
  if (foreign.length > 0)
    left.set(`of a material that this rig does not have: ${materials.join(", ")}`, foreign.length);
  const reasons = [...left].map(([why, number]) => `${number} ${why}`);
  const said = `Own break tests: ${used === 0 ? "none" : used} of ${tests.length} count towards this rig${used === 0 ? "; its strengths are those without a log" : `, for ${counted.join(", ")}`}.`;
  return [said, ...(reasons.length > 0 ? [`Break tests that do not count: ${reasons.join("; ")}.`] : [])];
}

/** "6 new, 7 with sun, 4 with falls": a test with two causes counts for both. */
function causeWords(uses: readonly (readonly WearDose[])[]): string {
  const counts = new Map<string, number>();
  const add = (word: string) => counts.set(word, (counts.get(word) ?? 0) + 1);
  for (const doses of uses) {
    if (doses.length === 0) add("new");
    for (const { id } of doses) add(`with ${id}`);
  }
  return [...counts].map(([word, number]) => `${number} ${word}`).join(", ");
}
