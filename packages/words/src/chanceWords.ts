/** The chances of one what-if in words. */
import { formatMass, type Rig } from "@secondline/rig";
import {
  type Chances,
  type NoChances,
  type Outcome,
  type PartChance,
  placeRange,
  type ScatterShare,
  type StudyProgress,
  type UncertainInput,
} from "@secondline/scenarios";
import { anchorTexts, generalCautions, judgedTexts } from "./cautionWords.ts";
import { atMost, chance, chanceRange } from "./chanceNumbers.ts";
import { type Language, type Say, sayIn } from "./language.ts";
import { capital, lowered, partName } from "./partNames.ts";
import { eventTitle, phraseText } from "./phrases.ts";
import { grouped, length, load, percent, rounded, seconds } from "./quantity.ts";

export const countOf = (say: Say, some: number, all: number): string =>
  some === all ? say("chance.allRuns", { all }) : say("chance.someRuns", { some, all });

/** What the chances come to. What no strength helps against comes first. */
export function chanceSentence(language: Language, rig: Rig, { runs, anyFails, parts }: Chances): string {
  const say = sayIn(language);
  const said: string[] = [];
  if (runs.lost > 0) said.push(say("chance.lost", { count: countOf(say, runs.lost, runs.done) }));
  if (runs.ground > 0) said.push(say("chance.ground", { count: countOf(say, runs.ground, runs.done) }));
  const [first] = parts;
  if (first) {
    said.push(say("chance.first", { part: chancePart(language, rig, first), chance: chanceRange(say, first.first) }));
  }
  const any = anyFails.reached ? chanceRange(say, anyFails) : atMost(say, anyFails.high);
  said.push(say("chance.any", { chance: any }));
  return said.join(" ");
}

/** How far the work is. */
export function workingText(language: Language, rig: Rig, { doing }: Pick<StudyProgress, "doing">): string {
  const say = sayIn(language);
  const what = doing
    ? say("chance.working.runs", { event: lowered(eventTitle(language, rig, doing)) })
    : say("chance.working.draws");
  return say("chance.working", { what });
}

/** The quick statement of every verdict: who is likeliest to go first in the worst what-if. */
export function glanceText(language: Language, rig: Rig, outcome: Outcome, most: number): string | undefined {
  const say = sayIn(language);
  const { likelyFirst, whatIfs } = outcome;
  if (!likelyFirst || likelyFirst.parts.length === 0) return undefined;
  const list = likelyFirst.parts
    .slice(0, most)
    .map(({ id, first }) =>
      say("chance.glanceOne", { part: lowered(partName(say, rig, id)), chance: chance(say, first.value) }),
    );
  const event = lowered(eventTitle(language, rig, whatIfs[likelyFirst.whatIf]!.whatIf));
  return say("chance.glance", { event, list: list.join(", ") });
}

/** A part; of webbing with what makes the stretch weak that is meant: "Main line, clamp mark". */
export function chancePart(language: Language, rig: Rig, { id, stretch }: PartChance): string {
  const say = sayIn(language);
  const name = partName(say, rig, id);
  return stretch && stretch.reason !== "webbing" ? say("part.inKnot", { part: name, place: stretch.reason }) : name;
}

/** Parts that are first less often than this, and were never seen to fail, are only counted [-]. */
const WORTH_A_ROW = 0.001;
export const worthARow = ({ first, fails }: PartChance): boolean => first.value >= WORTH_A_ROW || fails.value > 0;

/** How many parts have no row; nothing when all have. */
export function restText(language: Language, parts: readonly PartChance[]): string {
  const count = parts.filter((part) => !worthARow(part)).length;
  return count === 0 ? "" : sayIn(language)("chance.rest", { count });
}

/** What a source of scatter does by itself. */
export function shareText(language: Language, { first, distinguishable }: ScatterShare): string {
  const say = sayIn(language);
  return distinguishable ? chanceRange(say, first) : say("chance.nothingAlone");
}

export const shareName = ({ name }: ScatterShare): string => capital(name);

/** Middle and spread of an uncertain input: "80 kg", "± 10 %"; "0.5", "± 0.05 of the line"; by an anchor the range that is left. */
export function inputTexts(language: Language, input: UncertainInput): readonly [string, string] {
  const say = sayIn(language);
  const { central, unit, spread, distribution } = input;
  const middle = {
    kg: formatMass(central),
    N: load(central),
    m: length(central),
    share: percent(central),
    "-": String(Number(central.toPrecision(3))),
    s: seconds(central),
    line: String(Number(central.toFixed(3))),
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

function placeSpread(say: Say, input: UncertainInput, amount: number): string {
  const [from, to] = placeRange(input);
  const place = (share: number) => Number(share.toFixed(4));
  return to - from < 2 * input.spread - 1e-9
    ? say("chance.lineRange", { from: place(from), to: place(to) })
    : say("chance.ofLine", { amount });
}

const coarse = (share: number): string =>
  `${share < 0.0995 ? Number((100 * share).toPrecision(1)) : Math.round(100 * share)} %`;
/** Fine enough to tell an error from its limit. */
const tenths = (share: number): string => `${rounded(100 * share, 1, "nearest")} %`;

/** What the numbers rest on. */
export function chanceGrounds(language: Language, rig: Rig, chances: Chances): readonly string[] {
  const say = sayIn(language);
  const { runs, accuracy, inputs, grounds, method, anyFails, surfaces } = chances;
  const bySurface = method === "surface";
  const worst = surfaces.filter((one) => one.matters).sort((a, b) => b.error - a.error)[0];
  const said = [
    say("chance.rests.runs", { done: runs.done, accuracy, inputs: inputs.length }),
    bySurface && worst
      ? say("chance.rests.surface", { error: coarse(worst.error), part: partName(say, rig, worst.part) })
      : say("chance.rests.counted"),
    ...grounds.dropped.map(({ line, kept, of }) =>
      say("chance.rests.dropped", { line: partName(say, rig, line), kept, of }),
    ),
  ];
  if (grounds.meshChange) {
    said.push(
      say("chance.rests.mesh", {
        runs: grounds.meshChange.runs,
        most: coarse(grounds.meshChange.most),
        noise: bySurface ? say("chance.rests.meshNoise") : "",
      }),
    );
  }
  said.push(
    say("chance.rests.draws", {
      draws: grouped(grounds.draws),
      what: say(bySurface ? "chance.rests.thatNumber" : "chance.rests.numberOfRuns"),
    }),
  );
  if (anyFails.sampling === "conditional" && anyFails.spread !== undefined) {
    said.push(say("chance.rests.conditional", { spread: coarse(anyFails.spread) }));
  }
  return said;
}

/** With more of the failures outside of what was simulated, the reader must know [-]. */
const MUCH_BEYOND = 0.2;

/** Cautions of these chances alone, for where those of the whole rig already stand. */
export function ownChanceCautions(language: Language, rig: Rig, chances: Chances): readonly string[] {
  const say = sayIn(language);
  const { runs, method, surfaces, accuracy, grounds, judged, anchors, groundKnown } = chances;
  const said = [
    say("chance.caution.spreads"),
    ...judgedTexts(say, rig, judged),
    ...anchorTexts(say, rig, anchors),
    ...(groundKnown ? [] : [say("chance.caution.noGround")]),
  ];
  if (runs.lost > 0) said.push(say("chance.caution.lost", { count: countOf(say, runs.lost, runs.done) }));
  if (runs.ground > 0) said.push(say("chance.caution.ground", { count: countOf(say, runs.ground, runs.done) }));
  if (method === "runs") {
    const list = surfaces
      .filter((one) => one.matters && one.error > one.limit)
      .map(({ part, error, limit }) =>
        say("chance.caution.missed", { part: partName(say, rig, part), error: tenths(error), limit: tenths(limit) }),
      );
    said.push(say("chance.caution.misses", { list: list.join(", ") }));
  }
  if (runs.failed.length > 0) {
    said.push(say("chance.caution.failed", { count: countOf(say, runs.failed.length, runs.asked) }));
  }
  if (accuracy === "quick" && !grounds.meshChange) said.push(say("chance.caution.coarse"));
  if ((grounds.beyond ?? 0) > MUCH_BEYOND) {
    said.push(say("chance.caution.beyond", { share: percent(grounds.beyond!) }));
  }
  said.push(say("chance.caution.one"));
  return said;
}

export function chanceCautions(language: Language, rig: Rig, chances: Chances): readonly string[] {
  return [
    ...ownChanceCautions(language, rig, chances),
    ...generalCautions(language),
    ...(chances.invented ? [sayIn(language)("caution.invented")] : []),
  ];
}

/** Why there are none. */
export function noChancesText(language: Language, rig: Rig, why: NoChances): string {
  switch (why.kind) {
    case "noBackup":
    case "afterPart":
      return sayIn(language)(`chance.none.${why.kind}`);
    case "missing":
      return phraseText(language, rig, why.missing);
  }
}
