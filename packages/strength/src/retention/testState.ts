/** What had happened to a tested sample, as far as factors are known for it. */
import type { KnotKind, LineStock } from "@secondline/rig";
import type { BreakTest } from "../breakLog/breakTest.ts";
import { lastDose, type WearDose, type WearId } from "./wearFactors.ts";

/** Why a test counts for nothing. */
export type NotUsed = "wet" | "no dose" | "no months" | "beyond" | "other wear";

/** Words for a weakness that no factor here describes: what such a sample held says nothing of the others. */
const OTHER_WEAR = /\b(cut|slit|abra|chafe|scuff|glaz|heat|burn|damag|splice)/i;
const CLAMP = /clamp|weblock/i;
const SEWN = /sew|stitch/i;
const KNOT = /knot|figure|bowline|barrel|fisherman|butterfly|overhand/i;
const LEASH = /leash/i;
const KNOT_WORDS: readonly (readonly [RegExp, KnotKind])[] = [
  [/figure|eight/i, "figureEight"],
  [/barrel/i, "barrel"],
  [/bowline/i, "bowline"],
  [/butterfly/i, "butterfly"],
  [/fisherman/i, "doubleFisherman"],
  [/overhand/i, "overhand"],
  [/water/i, "waterKnot"],
];

export const isOfStock = (test: BreakTest, stock: LineStock): boolean =>
  test.material === stock.id || test.material === stock.name;

/** Doses of a sample, none for a new piece; or why it does not count. */
export function wearOfTest(test: BreakTest, stock: LineStock): readonly WearDose[] | NotUsed {
  const words = `${test.part} ${test.state}`;
  if (test.wet) return "wet";
  if (OTHER_WEAR.test(words)) return "other wear";
  const isNew = /\bnew\b/i.test(test.state);
  const sun = test.sunMonths ?? (isNew ? 0 : undefined);
  // A sample that says neither sun nor falls may have had any.
  if (sun === undefined && test.falls === undefined) return "no dose";
  const doses: WearDose[] = [];
  const add = (id: WearId, dose: number) => doses.push({ id, dose });
  if ((sun ?? 0) > 0) add("sun", sun!);
  if ((test.falls ?? 0) > 0) add(LEASH.test(test.part) ? "leash falls" : "falls", test.falls!);
  const months = test.monthsOutside ?? (isNew ? 0 : undefined);
  if (CLAMP.test(words) || test.clampedMonths !== undefined) {
    const clamped = test.clampedMonths ?? months;
    if (clamped === undefined) return "no months";
    add("clamp mark", clamped);
  }
  if (SEWN.test(words) || test.sewnMonths !== undefined) {
    const sewn = test.sewnMonths ?? months;
    if (sewn === undefined) return "no months";
    add("sewing", sewn);
  }
  const knot = knotOf(test, words);
  if (knot !== undefined) add(isRope(stock, test) ? `knot ${knot}` : "knot in webbing", 0);
  return doses.some(({ id, dose }) => dose > lastDose(stock, id)) ? "beyond" : doses;
}

function knotOf(test: BreakTest, words: string): KnotKind | undefined {
  if (test.knot !== undefined) return test.knot;
  if (!KNOT.test(words)) return undefined;
  return KNOT_WORDS.find(([word]) => word.test(words))?.[1] ?? "unknown";
}

/** Rope or flat webbing: as the stock says, else by the part's and the stock's words. */
function isRope(stock: LineStock, test: BreakTest): boolean {
  const { form } = stock as { readonly form?: "rope" | "webbing" };
  return form === undefined ? /rope|cord/i.test(`${stock.name} ${stock.id} ${test.part}`) : form === "rope";
}
