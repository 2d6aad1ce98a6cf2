/** Numbers of the two runs of a lesson, as its texts name them. */

import { GRAVITY, type Recording } from "@secondline/engine";
import type { PartId } from "@secondline/rig";
import type {
  Assessed,
  ClassOutcome,
  Crossing,
  Outcome,
  PartOutcome,
  Swept,
  WhatIfOutcome,
} from "@secondline/scenarios";
import { broughtIn, quantity, tellBasis, englishWords as words } from "@secondline/words";
import { RIG_HEIGHT } from "./rigs.ts";

/** One run of a lesson's rig: the fall for the eye, and what its parts had to carry. */
export interface LessonRun {
  readonly assessed: Assessed;
  readonly outcome: WhatIfOutcome;
  readonly recording: Recording;
  readonly study: Outcome;
  /** Hardest pulls of the same fall, each drawn by chance, in the order of the draws [N]. */
  readonly many?: readonly number[];
  /** The drop over a range of one number of the rig. */
  readonly swept?: Swept;
  /** The fall that is shown instead of this one: the hardest of many, or the one where a sweep meets its limit. */
  readonly shown?: ShownFall;
}

/** A fall for the eye. */
export interface ShownFall extends Pick<LessonRun, "assessed" | "outcome" | "recording"> {
  /** The value of the swept number, in its unit. */
  readonly at?: number;
}

/** The fall in the picture. */
export const inPicture = (run: LessonRun): ShownFall => run.shown ?? run;

/** The one place at which a sweep meets its limit; undefined where it does at none, or at several. */
export function crossingOf(swept: Swept | undefined): Crossing | undefined {
  const all = swept?.limits.flatMap(({ crossings }) => crossings) ?? [];
  return all.length === 1 ? all[0] : undefined;
}

export function partOutcomeOf(run: LessonRun, id: PartId): PartOutcome | undefined {
  return run.study.parts.find((part) => part.id === id);
}

/** What the rule says of a part in this one what-if. */
export function marginOf(run: LessonRun, id: PartId): ClassOutcome | undefined {
  const part = partOutcomeOf(run, id);
  return part?.governing && part.byClass[part.governing];
}

/** What became of the walker in the run that is shown. */
export const wayOut = ({ outcome }: LessonRun): "caught" | "lost" =>
  outcome.caughtBy === "nothing" || outcome.lostBecause !== undefined ? "lost" : "caught";

/** What happened, as it is told everywhere. */
export const storyOf = ({ assessed, outcome }: LessonRun): string => words.story(assessed.rig, outcome).join(" ");

/** Hardest pull of the main line at either anchor [N]. */
function largestAnchor({ outcome }: LessonRun): number {
  return Math.max(outcome.peaks?.mainA ?? Number.NaN, outcome.peaks?.mainB ?? Number.NaN);
}

type Facts = Readonly<Record<string, string>>;

/** What can be said before the prediction. */
export function givenFacts(before: LessonRun): Facts {
  return { height: quantity.length(RIG_HEIGHT), ...runFacts("before", before) };
}

/** What can be said after the run. */
export function allFacts(before: LessonRun, after: LessonRun): Facts {
  const [was, is] = [before.outcome.drop ?? Number.NaN, after.outcome.drop ?? Number.NaN];
  const knot = partOutcomeOf(after, "backup.endA")?.factors.find(({ name }) => name.startsWith("knot"));
  const mark = partOutcomeOf(after, "main")?.factors.find(({ name }) => name === "clamp mark");
  return {
    ...givenFacts(before),
    ...runFacts("after", after),
    // A ratio of two drops is neither load nor strength.
    dropRatio: quantity.rounded(is / was, 1, "nearest"),
    addedDrop: quantity.drop(is - was),
    dropPercent: quantity.percent(is / was),
    clearance: quantity.height(after.outcome.clearance ?? Number.NaN),
    freeKmh: quantity.kilometresPerHour(Math.sqrt(2 * GRAVITY * is)),
    ...manyFacts(after),
    ...breakFacts(after),
    ...sweepFacts(after),
    ...(knot ? { knotBasis: `${broughtIn(knot.basis.kind)}, ${tellBasis(knot.basis.note)}` } : {}),
    ...(mark ? { markBasis: `${broughtIn(mark.basis.kind)}, ${tellBasis(mark.basis.note)}` } : {}),
  };
}

/** The smallest, the largest and the middle of what was drawn. */
function manyFacts({ many = [] }: LessonRun): Facts {
  if (many.length === 0) return {};
  const sorted = [...many].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)]!;
  return {
    manyLeast: quantity.load(sorted[0]!),
    manyMost: quantity.load(sorted.at(-1)!),
    manyMiddle: quantity.load(middle),
    manyRatio: quantity.rounded(sorted.at(-1)! / middle, 1, "nearest"),
  };
}

/** Where the drop meets the limit, on the side that keeps it, and how it goes over the range. */
function sweepFacts({ swept }: LessonRun): Facts {
  const crossing = crossingOf(swept);
  const [first, last] = [swept?.points[0]?.curve, swept?.points.at(-1)?.curve];
  if (!crossing || !first || !last) return {};
  const [low, high] = [crossing.low ?? crossing.at, crossing.high ?? crossing.at];
  return {
    crossAt: `${quantity.rounded(crossing.at, 1, "down")} %`,
    crossLow: `${quantity.rounded(low, 1, "down")} %`,
    crossHigh: `${quantity.rounded(high, 1, "up")} %`,
    limit: `${quantity.required(crossing.limit.value)} m`,
    firstDrop: quantity.drop(first.value),
    lastDrop: quantity.drop(last.value),
    sweepRuns: String(swept!.runs),
  };
}

/** When the first part gave way besides what was asked, and at which load. */
function breakFacts({ outcome: { gaveWay }, recording: { events } }: LessonRun): Facts {
  const [first] = gaveWay;
  if (!first) return {};
  const broke = events.find(({ kind, time }) => kind === "break" && time === first.time);
  return { breakTime: quantity.seconds(first.time), breakLoad: quantity.load(broke?.value ?? Number.NaN) };
}

function runFacts(when: "before" | "after", run: LessonRun): Facts {
  const { assessed, outcome, recording } = run;
  const end = marginOf(run, "backup.endA");
  const main = marginOf(run, "main");
  const rated = assessed.rig.backup?.sections[0]?.stock.rated.strength;
  return {
    [`${when}Story`]: storyOf(run),
    [`${when}Drop`]: quantity.drop(outcome.drop ?? Number.NaN),
    [`${when}Pull`]: quantity.load(outcome.peaks?.leash ?? Number.NaN),
    [`${when}Anchor`]: quantity.load(largestAnchor(run)),
    [`${when}Time`]: quantity.seconds(recording.duration),
    ...(outcome.groundSpeed === undefined
      ? {}
      : {
          [`${when}Speed`]: quantity.speed(outcome.groundSpeed),
          [`${when}Kmh`]: quantity.kilometresPerHour(outcome.groundSpeed),
        }),
    ...(end ? partFacts(`${when}End`, end) : {}),
    ...(main ? partFacts(`${when}Main`, main) : {}),
    ...(rated === undefined ? {} : { webbingRated: quantity.strength(rated) }),
  };
}

/** E, R and r of the rule. */
function partFacts(name: string, { demand, strength5, margin, required }: ClassOutcome): Facts {
  return {
    [`${name}Load`]: quantity.load(demand),
    [`${name}Strength`]: quantity.strength(strength5),
    [`${name}Margin`]: quantity.margin(margin),
    [`${name}Required`]: quantity.required(required),
  };
}
