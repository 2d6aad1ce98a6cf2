/**
 * Tables of parts, of single failures and of parts that give way, for report and terminal. They have a file of their own
 * because the first load does not need them.
 */

import type { Basis, PartId, Rig } from "@secondline/rig";
import { type Outcome, type PartOutcome, PULL_LIMITS, type SingleFailure } from "@secondline/scenarios";
import { broughtIn } from "./broughtEnglish.ts";
import { followTexts } from "./followWords.ts";
import { english, type Language } from "./language.ts";
import { sayLaterIn } from "./laterLanguage.ts";
import { listed } from "./lists.ts";
import { partName, partTitle } from "./partNames.ts";
import { factor as factorText, limitIn, limit as limitText, loadIn, margin, percent, strengthIn } from "./quantity.ts";
import { bandText, basisText, type PartRow, type SingleWords, singleWords } from "./tableWords.ts";
import { governingOf } from "./verdictWords.ts";

export function createTableWords(language: Language) {
  return {
    personRow: (outcome: Pick<Outcome, "person">) => personRow(language, outcome),
    partsCaption: () => partsCaption(language),
    middleRow: (rig: Rig, part: PartOutcome) => middleRow(language, rig, part),
    singleRow: (rig: Rig, one: SingleFailure) => singleRow(language, rig, one),
    factors: (part: Pick<PartOutcome, "factors">) => factorsText(language, part),
    follows: (rig: Rig, outcome: Outcome) => followTexts(language, rig, outcome),
    numberedBases: (parts: readonly Pick<PartOutcome, "id" | "bases">[]) => numberedBases(language, parts),
  };
}

/** The pull on the person as a row, with its limits in the column of strengths. */
function personRow(language: Language, { person }: Pick<Outcome, "person">): PartRow | undefined {
  if (!person) return undefined;
  const say = sayLaterIn(language);
  const none = say("table.none");
  return {
    name: say("fact.pull"),
    demand: loadIn(person.demand),
    band: bandText(say, [person.low, person.high]),
    strength: PULL_LIMITS.map(({ limit }) => limitIn(limit)).join(" / "),
    margin: none,
    required: none,
    verdict: say(`person.grade.${person.grade}`),
    event: person.event,
  };
}

/** The meaning of the columns of the parts, and the source of the limits of the pull. */
function partsCaption(language: Language): readonly string[] {
  const say = sayLaterIn(language);
  const limits = PULL_LIMITS.map(({ limit, basis }) =>
    say("caption.limit", { limit: limitText(limit), basis: basisText(language, basis) }),
  );
  return [say("caption.parts"), say("caption.person", { limits: listed(limits, "semicolon") })];
}

interface MiddleRow {
  readonly name: string;
  readonly run: string;
  readonly strength: string;
  readonly ratio: string;
}

/** Middle values: the largest single run against the central strength. Undefined for a part that no run loaded. */
function middleRow(language: Language, rig: Rig, part: PartOutcome): MiddleRow | undefined {
  const worst = governingOf(part);
  if (!worst) return undefined;
  return {
    name: partTitle(sayLaterIn(language), rig, part),
    run: loadIn(worst.load),
    strength: strengthIn(worst.strength),
    ratio: margin(worst.strength / worst.load),
  };
}

/**
 * A part, the part that carries the walker without it, and the runs that show it, by their numbers in the table of what-ifs.
 */
function singleRow(language: Language, rig: Rig, one: SingleFailure): SingleWords & { readonly name: string } {
  const say = sayLaterIn(language);
  const events = rangesText(one.shownBy);
  const shown = one.catches === undefined ? "table.shown.not" : one.catches ? "table.shown.caught" : "table.shown.lost";
  return { ...singleWords(language, one), name: partName(say, rig, one.part), shown: say(shown, { events }) };
}

/** Indices as numbers of rows, with ranges: "6 to 18, 55". */
function rangesText(indices: readonly number[]): string {
  const ranges: { from: number; to: number }[] = [];
  for (const index of indices) {
    const last = ranges.at(-1);
    if (last && index === last.to + 1) last.to = index;
    else ranges.push({ from: index, to: index });
  }
  return listed(ranges.map(({ from, to }) => (from === to ? String(from + 1) : `${from + 1}–${to + 1}`)));
}

/** All factors of a part in one cell. */
function factorsText(language: Language, { factors }: Pick<PartOutcome, "factors">): string {
  const say = sayLaterIn(language);
  const list = factors.map(({ name, value, spread }) =>
    say("table.factorSpread", { name: broughtIn(name), value: factorText(value), spread: percent(spread, "up") }),
  );
  return list.length === 0 ? say("table.none") : listed(list);
}

/** The bases of the strengths, each with a number, and the numbers of each part's bases. */
function numberedBases(
  language: Language,
  parts: readonly Pick<PartOutcome, "id" | "bases">[],
): { readonly list: readonly string[]; readonly of: ReadonlyMap<PartId, readonly number[]> } {
  const numbers = new Map<string, number>();
  const numberOf = (basis: Basis) => {
    const text = basisText(language, basis);
    const number = numbers.get(text) ?? numbers.size + 1;
    numbers.set(text, number);
    return number;
  };
  const of = new Map(parts.map((part) => [part.id, part.bases.map(numberOf)]));
  return { list: [...numbers.keys()], of };
}

/** The words of English. */
export const tableWords = createTableWords(english);
