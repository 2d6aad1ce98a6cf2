/** All what-ifs of a rig, one after another, and the verdict over them. In slices, like `runWhatIf`. */
import { type Accuracy, solveStanding } from "@secondline/engine";
import type { Basis, Rig } from "@secondline/rig";
import { type BreakTest, weakestFirst } from "@secondline/strength";
import { anchorFacts } from "./anchorCautions.ts";
import { type CautionFacts, cautions, NEAR_GROUND } from "./cautions.ts";
import { judgedParts, raisedByHand } from "./judgementCautions.ts";
import { likelyFirst } from "./likelyFirst.ts";
import { firstToFail, Margins } from "./margins.ts";
import type { Outcome, PartOutcome, Verdict, WhatIf, WhatIfOutcome } from "./outcome.ts";
import { QUICK_ALLOWANCE } from "./quickLook.ts";
import { type RigStrengths, rigStrengths } from "./rigStrengths.ts";
import { type CatchTimes, runWith, type StudyProgress, scaled } from "./runWhatIf.ts";
import { verdictSentence } from "./sentence.ts";
import { toProblem } from "./toProblem.ts";
import { trace } from "./trace.ts";
import { loadUncertainty } from "./uncertainty.ts";
import { whatIfKey, whatIfTitle } from "./whatIf.ts";
import { whatIfSet } from "./whatIfSet.ts";

export interface StudyOptions {
  readonly accuracy: Accuracy;
  /** What to run; default: the full set of the rig, or its few when `size` is "quick". */
  readonly whatIfs?: readonly WhatIf[];
  readonly size?: "quick" | "full";
  /** Run the governing what-ifs again on another mesh and give every load a ±. */
  readonly estimate?: boolean;
  /** Keep thinned-out forces of every run, for plots. */
  readonly traces?: boolean;
  /** Own break tests, in place of published factors where there are some. */
  readonly breakTests?: readonly BreakTest[];
}

/** The statics could not be solved: nothing can be said of the rig. */
export class NoEquilibrium extends Error {}

/** Studies a rig. Every `next()` does a few milliseconds of work; stop by not calling it again. */
export function* study(rig: Rig, options: StudyOptions): Generator<StudyProgress, Outcome, void> {
  const strengths = rigStrengths(rig, options.breakTests);
  const { weakPlaces } = strengths;
  const whatIfs = options.whatIfs ?? whatIfSet(rig, { size: options.size ?? "full", weakPlaces });
  const statics = staticsOf(rig, strengths);
  const margins = new Margins(rig, strengths);
  const outcomes: WhatIfOutcome[] = [];
  const catches: CatchTimes = new Map();
  const share = options.estimate ? 0.7 : 1;
  for (const [i, whatIf] of whatIfs.entries()) {
    const [from, to] = [(share * i) / whatIfs.length, (share * (i + 1)) / whatIfs.length];
    const work = runWith(rig, whatIf, strengths, { accuracy: options.accuracy }, catches);
    const { outcome, recording } = yield* scaled(work, from, to, whatIfTitle(whatIf, rig.span));
    if (recording && outcome.ok) margins.add(i, outcome, recording);
    outcomes.push(recording && outcome.ok && options.traces ? { ...outcome, trace: trace(recording) } : outcome);
    yield { done: to, doing: outcome.title };
  }
  const required = rig.requiredFactor.value;
  const set = setOf(whatIfs, whatIfSet(rig, { size: "full", weakPlaces }), options.whatIfs !== undefined);
  const allowance = set.kind === "quick" ? QUICK_ALLOWANCE : 1;
  let parts = margins.parts(required, allowance);
  if (options.estimate && parts.length > 0) {
    const work = loadUncertainty(rig, parts, whatIfs, strengths, options.accuracy);
    parts = margins.parts(required, allowance, yield* scaled(work, share, 1, "Loads on a second mesh"));
  }
  const told = {
    anchors: anchorFacts(rig, strengths.parts, margins.anchorLoads),
    judged: judgedParts(strengths.parts, parts),
    required,
    allowance,
  };
  return conclude(rig, options.accuracy, set, outcomes, parts, margins, statics, told);
}

/** Whatever holds all of the full set is the full set, whoever chose it. */
function setOf(run: readonly WhatIf[], full: readonly WhatIf[], chosen: boolean): NonNullable<Outcome["set"]> {
  const keys = new Set(run.map(whatIfKey));
  const complete = full.every((one) => keys.has(whatIfKey(one)));
  return { kind: complete ? "full" : chosen ? "chosen" : "quick", run: run.length, full: full.length };
}

function staticsOf(rig: Rig, strengths: RigStrengths): Outcome["statics"] {
  const solved = solveStanding(toProblem(rig, { kind: "leashFall", at: 0.5 }, strengths.breaking));
  if (!solved.ok) throw new NoEquilibrium(`The rig at rest could not be solved: ${solved.message}`);
  return {
    unloadedTension: solved.unloaded.tension,
    unloadedSag: solved.unloaded.sag,
    standingTension: solved.standing.tension,
    standingSag: solved.standing.sag,
  };
}

function conclude(
  rig: Rig,
  accuracy: Accuracy,
  set: NonNullable<Outcome["set"]>,
  whatIfs: readonly WhatIfOutcome[],
  parts: readonly PartOutcome[],
  margins: Margins,
  statics: Outcome["statics"],
  told: Pick<CautionFacts, "anchors" | "judged" | "required"> & { readonly allowance: number },
): Outcome {
  const incomplete = whatIfs.flatMap((one, i) => (one.ok ? [] : [i]));
  if (parts.length === 0) throw new NothingComputed(whatIfs);
  const first = firstToFail(parts, (id) => margins.gaveWayFirst(id));
  const verdict = overall(parts, whatIfs);
  const required = rig.requiredFactor.value;
  const feet = whatIfs.flatMap((one) => (one.feetClearance === undefined ? [] : [one.feetClearance]));
  return {
    rigName: rig.name,
    invented: rig.invented,
    accuracy,
    set,
    requiredFactor: required,
    whatIfs,
    parts,
    firstToFail: first.id,
    verdict,
    likelyFirst: likelyFirst(margins.governing()),
    incomplete,
    sentence: verdictSentence({
      rig,
      verdict,
      whatIfs,
      parts,
      first,
      required,
      incomplete: incomplete.length,
      allowance: told.allowance,
      raised: raisedByHand(told.judged ?? []),
    }),
    weakestBases: weakestBases(parts),
    cautions: cautions({
      invented: rig.invented,
      failedWhatIfs: incomplete.length,
      unfoundedParts: parts.filter(unfounded).length,
      parts: parts.length,
      hasBackup: rig.backup !== undefined,
      ...told,
      endedOnGround: whatIfs.filter((one) => one.groundSpeed !== undefined).length,
      coarse: accuracy === "quick",
      withoutUncertainty: parts.filter((part) => part.uncertaintyUnknown).map((part) => part.name),
      ...(set.kind === "full" ? {} : { reduced: set }),
      ...(feet.length === 0 ? {} : { feetClearance: Math.min(...feet) }),
    }),
    statics,
  };
}

/** No what-if could be computed. */
export class NothingComputed extends Error {
  constructor(whatIfs: readonly WhatIfOutcome[]) {
    const reasons = new Set(whatIfs.map((one) => one.problem ?? "no reason given"));
    super(`No what-if could be computed reliably, so there is no verdict. ${[...reasons].join(" ")}`);
  }
}

/** The worst of all parts; a walker whom nothing holds or who meets the ground fails, a near ground or a gap is thin. */
function overall(parts: readonly PartOutcome[], whatIfs: readonly WhatIfOutcome[]): Verdict {
  const feet = (one: WhatIfOutcome) => one.feetClearance ?? Number.POSITIVE_INFINITY;
  if (parts.some((part) => part.verdict === "fails")) return "fails";
  if (whatIfs.some((one) => one.ok && (!one.caught || feet(one) <= 0))) return "fails";
  const gaps = whatIfs.some((one) => !one.ok || feet(one) < NEAR_GROUND);
  return gaps || parts.some((part) => part.verdict === "thin") ? "thin" : "holds";
}

const UNFOUNDED = new Set(["assumed", "from memory", "common practice"]);
const unfounded = (part: PartOutcome) => part.bases.some((basis) => UNFOUNDED.has(basis.kind));

const MOST_BASES = 6;

/** The weakest bases of the parts that are nearest to failing: what the verdict hangs on. */
function weakestBases(parts: readonly PartOutcome[]): readonly Basis[] {
  const nearest = [...parts].sort((a, b) => a.margin - b.margin).slice(0, 4);
  return weakestFirst(nearest.flatMap((part) => part.bases.slice(0, 3))).slice(0, MOST_BASES);
}
