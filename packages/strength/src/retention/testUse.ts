/** Which break tests of a log say something of a webbing or rope over sun and falls, and why the others do not. */
import type { LineStock } from "@secondline/rig";
import type { BreakTest } from "../breakLog/breakTest.ts";
import { fallsFactor } from "../derating/falls.ts";
import { sunFactor } from "../derating/sun.ts";

/** What a test counts for, or why it counts for nothing. */
export type TestUse = { readonly sun: boolean; readonly falls: boolean } | NotUsed;
export type NotUsed = "wet" | "did not break" | "no dose" | "both" | "beyond" | "other wear";

export const isOfStock = (test: BreakTest, stock: LineStock): boolean =>
  test.material === stock.id || test.material === stock.name;

/**
 * Words for a part or a state that is weakened by something else besides: what such a sample held says nothing of sun or falls
 * alone, and its own factor would be counted twice.
 */
const OTHER_WEAR =
  /clamp|weblock|sew|stitch|splice|loop|sling|knot|figure|bowline|barrel|fisherman|butterfly|overhand|cut|abra|chafe|scuff|glaz|heat|burn|damag|join/i;

/**
 * A dry test that broke counts for the one cause it has: sun without falls, or falls without sun; a new part for both. One
 * whose part or state names another weakness (a clamp mark, stitching, a knot) counts for nothing here, and neither does one
 * with a dose beyond what the published factor covers: there the cautious factor stands.
 */
export function useOfTest(test: BreakTest, stock: LineStock): TestUse {
  const { sunMonths, falls } = test;
  if (test.wet) return "wet";
  if (test.result.kind === "above") return "did not break";
  if (OTHER_WEAR.test(`${test.part} ${test.state}`)) return "other wear";
  if (sunMonths === undefined && falls === undefined) return "no dose";
  if ((sunMonths ?? 0) > 0 && (falls ?? 0) > 0) return "both";
  const within = (dose: number | undefined, edge: number) => dose === undefined || dose <= edge;
  const covered =
    within(sunMonths, sunFactor(stock.fibre, 0).validity!.to) && within(falls, fallsFactor(0, "webbing").validity!.to);
  if (!covered) return "beyond";
  return {
    sun: sunMonths !== undefined && (falls ?? 0) === 0,
    falls: falls !== undefined && (sunMonths ?? 0) === 0,
  };
}

const WHY: Readonly<Record<NotUsed, string>> = {
  wet: "pulled wet",
  "did not break": "that did not break",
  "no dose": "without sun_months or falls",
  both: "with both sun and falls",
  "other wear": "weakened by something else too, by the words for part and state",
  beyond: "with more sun or falls than the published factor covers",
};

/** What a log does for a rig's webbings and ropes, in sentences; none without tests. */
export function testUseWords(stocks: readonly LineStock[], tests: readonly BreakTest[]): string[] {
  if (tests.length === 0) return [];
  const known = [...new Map(stocks.map((stock) => [stock.id, stock])).values()];
  const counted: string[] = [];
  const left = new Map<string, number>();
  let used = 0;
  for (const stock of known) {
    const uses = tests.filter((test) => isOfStock(test, stock)).map((test) => useOfTest(test, stock));
    for (const use of uses) if (typeof use === "string") left.set(WHY[use], (left.get(WHY[use]) ?? 0) + 1);
    const good = uses.filter((use) => typeof use !== "string");
    const [sun, falls] = [good.filter((use) => use.sun).length, good.filter((use) => use.falls).length];
    used += good.length;
    if (good.length > 0) counted.push(`${stock.name} (${sun} over sun, ${falls} over falls)`);
  }
  const foreign = tests.filter((test) => !known.some((stock) => isOfStock(test, stock)));
  const materials = [...new Set(foreign.map(({ material }) => `"${material}"`))];
  if (foreign.length > 0)
    left.set(`of a material that this rig does not have: ${materials.join(", ")}`, foreign.length);
  const reasons = [...left].map(([why, count]) => `${count} ${why}`);
  const said = `Own break tests: ${used === 0 ? "none" : used} of ${tests.length} count towards this rig${used === 0 ? "; its strengths are those without a log" : `, for ${counted.join(", ")}`}.`;
  return [said, ...(reasons.length > 0 ? [`Break tests that do not count: ${reasons.join("; ")}.`] : [])];
}
