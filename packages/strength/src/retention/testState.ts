/** The wear of a tested sample, as far as there are factors for it. */
import type { KnotKind, LineStock } from "@secondline/rig";
import { alikeTests } from "../breakLog/alikeTests.ts";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { nameKey } from "../breakLog/testGroup.ts";
import { lastDose, type WearDose, type WearId } from "./wearFactors.ts";

/** Reason why a test counts for nothing. */
export type NotUsed = "wet" | "no dose" | "no months" | "beyond" | "other wear";

/** Words for a weakness that no factor here describes. The strength of such a sample says nothing about other samples. */
const OTHER_WEAR = /\b(cut|slit|abra|chafe|scuff|glaz|heat|burn|damag|splice)/i;
const CLAMP_PATTERN = /clamp|weblock/i;
const SEWN_PATTERN = /sew|stitch/i;
const KNOT_PATTERN = /knot|figure|bowline|barrel|fisherman|butterfly|overhand/i;
const LEASH_PATTERN = /leash/i;
const KNOT_WORDS: readonly (readonly [RegExp, KnotKind])[] = [
  [/figure|eight/i, "figureEight"],
  [/barrel/i, "barrel"],
  [/bowline/i, "bowline"],
  [/butterfly/i, "butterfly"],
  [/fisherman/i, "doubleFisherman"],
  [/overhand/i, "overhand"],
  [/water/i, "waterKnot"],
];

export function isOfStock({ material }: BreakTest, { id, name }: LineStock): boolean {
  const named = nameKey(material);
  return named === nameKey(id) || named === nameKey(name);
}

/** Samples of a stock that are alike, with the doses for which they count. */
export interface UsedTests {
  /** Doses, none for a new piece; or why they do not count. */
  readonly use: readonly WearDose[] | NotUsed;
  /** Doses of samples that were pulled wet, as far as they can be told. */
  readonly wet?: readonly WearDose[];
  readonly tests: readonly BreakTest[];
}

/** All tests of a stock. */
export function testsOfStock(tests: readonly BreakTest[], stock: LineStock): UsedTests[] {
  return alikeTests(tests).flatMap(({ sample, tests: alike }): UsedTests[] => {
    if (!isOfStock(sample, stock)) return [];
    const wet = sample.wet ? dosesOf(sample, stock) : undefined;
    const use = wearOfTest(sample, stock);
    return [{ use, tests: alike, ...(wet === undefined || typeof wet === "string" ? {} : { wet }) }];
  });
}

/** Doses of a sample, none for a new piece; or why it does not count. */
export function wearOfTest(test: BreakTest, stock: LineStock): readonly WearDose[] | NotUsed {
  return test.wet ? "wet" : dosesOf(test, stock);
}

function dosesOf(test: BreakTest, stock: LineStock): readonly WearDose[] | NotUsed {
  const { otherWear, isNew, isLeash, isClamp, isSewn, knotNamed } = wordsOf(test);
  if (otherWear) return "other wear";
  const sun = test.sunMonths ?? (isNew ? 0 : undefined);
  // A sample that says neither sun nor falls may have had any.
  if (sun === undefined && test.falls === undefined) return "no dose";
  const doses: WearDose[] = [];
  const add = (id: WearId, dose: number) => doses.push({ id, dose });
  if ((sun ?? 0) > 0) add("sun", sun!);
  if ((test.falls ?? 0) > 0) add(isLeash ? "leash falls" : "falls", test.falls!);
  const months = test.monthsOutside ?? (isNew ? 0 : undefined);
  if (isClamp || test.clampedMonths !== undefined) {
    const clamped = test.clampedMonths ?? months;
    if (clamped === undefined) return "no months";
    add("clamp mark", clamped);
  }
  if (isSewn || test.sewnMonths !== undefined) {
    const sewn = test.sewnMonths ?? months;
    if (sewn === undefined) return "no months";
    add("sewing", sewn);
  }
  const knot = test.knot ?? knotNamed;
  if (knot !== undefined) add(isRope(stock, test) ? `knot ${knot}` : "knot in webbing", 0);
  return doses.some(({ id, dose }) => dose > lastDose(stock, id)) ? "beyond" : doses;
}

interface SampleWords {
  readonly otherWear: boolean;
  readonly isNew: boolean;
  readonly isLeash: boolean;
  readonly isClamp: boolean;
  readonly isSewn: boolean;
  readonly knotNamed: KnotKind | undefined;
}

const READ_SAMPLES = new Map<string, SampleWords>();
/** A log has few different words for part and state. */
const MOST_KEPT_SAMPLES = 1000;

/** The meaning of the words for part and state, read once. */
function wordsOf({ part, state }: BreakTest): SampleWords {
  const key = `${part}\n${state}`;
  const known = READ_SAMPLES.get(key);
  if (known !== undefined) return known;
  const words = `${part} ${state}`;
  const read = {
    otherWear: OTHER_WEAR.test(words),
    isNew: /\bnew\b/i.test(state),
    isLeash: LEASH_PATTERN.test(part),
    isClamp: CLAMP_PATTERN.test(words),
    isSewn: SEWN_PATTERN.test(words),
    knotNamed: KNOT_PATTERN.test(words) ? (KNOT_WORDS.find(([word]) => word.test(words))?.[1] ?? "unknown") : undefined,
  };
  if (READ_SAMPLES.size >= MOST_KEPT_SAMPLES) READ_SAMPLES.clear();
  READ_SAMPLES.set(key, read);
  return read;
}

/** Rope or flat webbing: by the stock's field, else by the words of the part and the stock. */
function isRope(stock: LineStock, test: BreakTest): boolean {
  const { form } = stock as { readonly form?: "rope" | "webbing" };
  return form === undefined ? /rope|cord/i.test(`${stock.name} ${stock.id} ${test.part}`) : form === "rope";
}
