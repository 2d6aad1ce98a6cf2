/** Numbers of the two runs of a lesson, as its texts name them. */
import type { Recording } from "@secondline/engine";
import { formatForce, formatPercent, formatRatio, formatSpeed, formatTime, type Rig } from "@secondline/rig";
import type { Outcome, PartOutcome, WhatIfOutcome } from "@secondline/scenarios";
import { lengthWords } from "../scene/words.ts";
import { HEIGHT } from "./rigs.ts";

/** One run of a lesson's rig: the fall for the eye, and what its parts had to carry. */
export interface LessonRun {
  readonly rig: Rig;
  readonly outcome: WhatIfOutcome;
  readonly recording: Recording;
  readonly study: Outcome;
}

const GRAVITY = 9.80665;

export function partOf(run: LessonRun, id: string): PartOutcome | undefined {
  return run.study.parts.find((part) => part.id === id);
}

/** Hardest pull of the main line at either anchor [N]. */
function largestAnchor({ outcome }: LessonRun): number {
  return Math.max(outcome.peaks?.mainA ?? Number.NaN, outcome.peaks?.mainB ?? Number.NaN);
}

type Facts = Readonly<Record<string, string>>;

/** What can be said before the prediction. */
export function givenFacts(before: LessonRun): Facts {
  return { height: lengthWords(HEIGHT), ...runFacts("before", before) };
}

/** What can be said after the run. */
export function allFacts(before: LessonRun, after: LessonRun): Facts {
  const [was, is] = [before.outcome.drop ?? Number.NaN, after.outcome.drop ?? Number.NaN];
  const knot = partOf(after, "backup.endA")?.factors.find(({ name }) => name.startsWith("knot"));
  const trace = partOf(after, "main")?.factors.find(({ name }) => name === "clamp mark");
  return {
    ...givenFacts(before),
    ...runFacts("after", after),
    // Not as margins are written, which are rounded to the safe side.
    dropRatio: String(Number((is / was).toPrecision(2))),
    addedDrop: lengthWords(is - was),
    dropPercent: formatPercent(Number((is / was).toFixed(2))),
    clearance: lengthWords(after.outcome.clearance ?? Number.NaN),
    freeKmh: kilometresPerHour(Math.sqrt(2 * GRAVITY * is)),
    required: formatRatio(after.rig.requiredFactor.value),
    ...(knot ? { knotBasis: `${knot.basis.kind}, ${knot.basis.note}` } : {}),
    ...(trace ? { traceBasis: `${trace.basis.kind}, ${trace.basis.note}` } : {}),
  };
}

function runFacts(when: "before" | "after", run: LessonRun): Facts {
  const { outcome, recording } = run;
  const end = partOf(run, "backup.endA");
  const main = partOf(run, "main");
  return {
    [`${when}Drop`]: lengthWords(outcome.drop ?? Number.NaN),
    [`${when}Pull`]: formatForce(outcome.peaks?.leash ?? Number.NaN),
    [`${when}Anchor`]: formatForce(largestAnchor(run)),
    [`${when}Time`]: formatTime(recording.duration),
    ...(outcome.groundSpeed === undefined
      ? {}
      : {
          [`${when}Speed`]: formatSpeed(outcome.groundSpeed),
          [`${when}Kmh`]: kilometresPerHour(outcome.groundSpeed),
        }),
    ...(end ? partFacts(`${when}End`, end) : {}),
    ...(main ? partFacts(`${when}Main`, main) : {}),
    webbingRated: formatForce(run.rig.backup?.sections[0]?.stock.rated.strength ?? Number.NaN),
  };
}

function partFacts(name: string, part: PartOutcome): Facts {
  return {
    [`${name}Load`]: formatForce(part.load),
    [`${name}Strength`]: formatForce(part.strength),
    [`${name}Margin`]: formatRatio(part.margin),
  };
}

const kilometresPerHour = (speed: number) => `${Math.round(speed * 3.6)} km/h`;
