/** The chances of one what-if in words. */

import type { Rig } from "@secondline/rig";
import {
  type Chances,
  type Counted,
  type NoChances,
  type Outcome,
  type PartChance,
  placeRange,
  type ScatterShare,
  type StudyProgress,
  type UncertainInput,
} from "@secondline/scenarios";
import { broughtIn } from "./broughtEnglish.ts";
import { anchorTexts, generalCautions, judgedTexts, unconfirmedTexts } from "./cautionWords.ts";
import { chance, chanceRange, chanceSpan, SMALLEST_CHANCE } from "./chanceNumbers.ts";
import { formatMass } from "./formats.ts";
import { type Language, sayIn } from "./language.ts";
import { type LaterSay, sayLaterIn } from "./laterLanguage.ts";
import { listed } from "./lists.ts";
import { capital, lowered, partName, weakness } from "./partNames.ts";
import { eventTitle, phraseText } from "./phrases.ts";
import { length, load, number, percent, seconds } from "./quantity.ts";

export const countOf = (say: LaterSay, some: number, all: number): string =>
  some === all ? say("chance.allRuns", { all }) : say("chance.someRuns", { some, all });

/** "3 of 64 draws (1 to 13 %)". */
const countedText = (say: LaterSay, { count, chance: { low, high } }: Counted, all: number): string =>
  say("chance.counted", { count: countOf(say, count, all), range: chanceSpan(say, low, high) });

/** The result of the chances. Events against which no strength helps come first. */
export function chanceSentence(language: Language, rig: Rig, { runs, anyFails, parts }: Chances): string {
  const say = sayLaterIn(language);
  const said: string[] = [];
  if (runs.lost.count > 0) said.push(say("chance.lost", { count: countedText(say, runs.lost, runs.done) }));
  if (runs.ground.count > 0) said.push(say("chance.ground", { count: countedText(say, runs.ground, runs.done) }));
  const [first] = parts;
  if (first) {
    said.push(say("chance.first", { part: chancePart(language, rig, first), chance: chanceRange(say, first.first) }));
  }
  said.push(say("chance.any", { chance: chanceRange(say, anyFails) }));
  return said.join(" ");
}

/** Progress of the work. */
export function workingText(language: Language, rig: Rig, { doing }: Pick<StudyProgress, "doing">): string {
  const say = sayLaterIn(language);
  const what = doing
    ? say("chance.working.runs", { event: lowered(eventTitle(language, rig, doing)) })
    : say("chance.working.draws");
  return say("chance.working", { what });
}

/** The quick statement of every verdict: the parts that are likeliest to fail first in the worst what-if. */
export function glanceText(language: Language, rig: Rig, outcome: Outcome, most: number): string | undefined {
  const say = sayLaterIn(language);
  const { likelyFirst, whatIfs } = outcome;
  if (!likelyFirst || likelyFirst.parts.length === 0) return undefined;
  const list = likelyFirst.parts
    .slice(0, most)
    .map(({ id, first }) =>
      say("chance.glanceOne", { part: lowered(partName(say, rig, id)), chance: chance(say, first.value) }),
    );
  const event = lowered(eventTitle(language, rig, whatIfs[likelyFirst.whatIf]!.whatIf));
  return say("chance.glance", { event, list: listed(list) });
}

/** A part; for webbing with the cause of the weak stretch: "Main line, clamp mark". */
export const chancePart = (language: Language, rig: Rig, { id, stretch }: PartChance): string =>
  placed(language, rig, id, stretch?.reason);

function placed(language: Language, rig: Rig, id: PartChance["id"], reason: string | undefined): string {
  const say = sayLaterIn(language);
  const name = partName(say, rig, id);
  return reason === undefined || reason === "webbing"
    ? name
    : say("part.inKnot", { part: name, place: weakness(reason) });
}

/** Parts that are first less often than this, and almost never fail, have no row and are only counted [-]. */
const LEAST_ROW_CHANCE = 0.001;
export const worthARow = ({ first, fails }: PartChance): boolean =>
  first.value >= LEAST_ROW_CHANCE || fails.value >= SMALLEST_CHANCE;

/** Number of parts without a row; empty if all have one. */
export function restText(language: Language, parts: readonly PartChance[]): string {
  const count = parts.filter((part) => !worthARow(part)).length;
  return count === 0 ? "" : sayLaterIn(language)("chance.rest", { count });
}

/** Share of a source of scatter. */
export function shareText(language: Language, { share, distinguishable }: ScatterShare): string {
  const say = sayLaterIn(language);
  return distinguishable ? chanceRange(say, share) : say("chance.nothingAlone");
}

export const shareName = (language: Language, { name }: ScatterShare): string =>
  name === undefined ? sayLaterIn(language)("chance.left") : capital(broughtIn(name));

/** The part and quantity to which the shares belong. */
export const sharesTitle = (language: Language, rig: Rig, { part, reason }: Chances["shares"]): string =>
  sayLaterIn(language)("chance.table.source", { part: lowered(placed(language, rig, part, reason)) });

/** Middle and spread of an uncertain input: "80 kg", "± 10 %"; "0.5", "± 0.05 of the line"; by an anchor the range that is left. */
export function inputTexts(language: Language, input: UncertainInput): readonly [string, string] {
  const say = sayLaterIn(language);
  const { central, unit, spread, distribution } = input;
  const middle = {
    kg: formatMass(central),
    N: load(central),
    m: length(central),
    share: percent(central),
    "-": number(Number(central.toPrecision(3))),
    s: seconds(central),
    line: number(Number(central.toFixed(3))),
    times: say("chance.asGiven"),
  }[unit];
  const amount = Number(spread.toPrecision(3));
  return [
    middle,
    unit === "s"
      ? `± ${seconds(spread)}`
      : distribution === "uniform"
        ? placeSpread(say, input, amount)
        : `± ${percent(amount)}`,
  ];
}

function placeSpread(say: LaterSay, input: UncertainInput, amount: number): string {
  const [from, to] = placeRange(input);
  const place = (share: number) => Number(share.toFixed(4));
  return to - from < 2 * input.spread - 1e-9
    ? say("chance.lineRange", { from: place(from), to: place(to) })
    : say("chance.ofLine", { amount });
}

/** The bases of the numbers. */
export function chanceGrounds(language: Language, rig: Rig, chances: Chances): readonly string[] {
  const say = sayLaterIn(language);
  const { runs, accuracy, inputs, dropped, parts } = chances;
  const some = parts.filter(({ loaded, first }) => loaded > 0 && loaded < runs.done && first.high > 0);
  return [
    say(`chance.rests.runs.${accuracy}`, { done: runs.done, inputs: inputs.length }),
    say("chance.rests.loads"),
    ...some.map(({ id, loaded }) =>
      say("chance.rests.someLoad", { part: partName(say, rig, id), count: countOf(say, loaded, runs.done) }),
    ),
    ...dropped.map(({ line, kept, of }) => say("chance.rests.dropped", { line: partName(say, rig, line), kept, of })),
    say("chance.rests.strengths"),
    say("chance.rests.intervals"),
  ];
}

/** Cautions of these chances alone, for places that already have those of the whole rig. */
export function ownChanceCautions(language: Language, rig: Rig, chances: Chances): readonly string[] {
  const say = sayLaterIn(language);
  const { runs, accuracy, judged, anchors, groundKnown } = chances;
  const said = [
    ...unconfirmedTexts(sayIn(language), rig),
    say("chance.caution.spreads"),
    ...judgedTexts(say, rig, judged),
    ...anchorTexts(say, rig, anchors),
    ...(groundKnown ? [] : [say("chance.caution.noGround")]),
  ];
  if (runs.lost.count > 0) said.push(say("chance.caution.lost", { count: countOf(say, runs.lost.count, runs.done) }));
  if (runs.ground.count > 0) {
    said.push(say("chance.caution.ground", { count: countOf(say, runs.ground.count, runs.done) }));
  }
  if (runs.failed.length > 0) {
    said.push(say("chance.caution.failed", { count: countOf(say, runs.failed.length, runs.asked) }));
  }
  if (accuracy === "quick") said.push(say("chance.caution.coarse"));
  said.push(say("chance.caution.one"));
  return said;
}

export function chanceCautions(language: Language, rig: Rig, chances: Chances): readonly string[] {
  return [
    ...ownChanceCautions(language, rig, chances),
    ...generalCautions(language),
    ...(chances.invented ? [sayLaterIn(language)("caution.invented")] : []),
  ];
}

/** The reason why there are no chances. */
export function noChancesText(language: Language, rig: Rig, why: NoChances): string {
  switch (why.kind) {
    case "noBackup":
    case "afterPart":
      return sayLaterIn(language)(`chance.none.${why.kind}`);
    case "missing":
      return phraseText(language, rig, why.missing);
  }
}
