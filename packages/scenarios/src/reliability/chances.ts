/**
 * How likely each part is to fail, and to be the first, in one what-if: the draws that a verdict rests on, looked at another way.
 * Loads are learnt from the draws, strengths scatter as in the verdict, and the rest is worked out. Runs can be made by anybody: a plan
 * says which, and their results are handed back.
 */
import type { Accuracy } from "@secondline/engine";
import type { PartId } from "@secondline/rig";
import { countedShare, type FailureChances, failureChances, type VarianceSource } from "@secondline/strength";
import type { Assessed } from "../assessment/assessment.ts";
import { inputHash } from "../assessment/inputHash.ts";
import { eventBefore, missingIn, type WhatIf, whatIfKey } from "../events/registry.ts";
import type { RunResult } from "../facts/runFacts.ts";
import type { StudyProgress } from "../outcome/studyProgress.ts";
import { anchorFacts, judgedFactors } from "../rule/cautionFacts.ts";
import { executeRun } from "../run/executeRun.ts";
import type { RunOrder } from "../run/runOrder.ts";
import { INPUT_IDS, type Spreads, type UncertainInput, uncertainInputs } from "../scatter/inputs.ts";
import { type DrawSample, Sampler, SEED } from "../scatter/sampler.ts";
import { type RigStrengths, rigStrengths } from "../strengths/rigStrengths.ts";
import type { Chances, NoChances, PartChance, ScatterShare } from "./chancesOutcome.ts";
import { type DrawnRuns, drawnRuns, medianLoads } from "./drawnRuns.ts";
import { droppedStretches, type LoadedPart, loadedParts, worthKeeping } from "./loadedParts.ts";

export interface ChancesOptions {
  readonly whatIf: WhatIf;
  /** Draws of the what-if; default 64. */
  readonly runs?: number;
  /** Another one draws other falls. */
  readonly seed?: number;
  /** Default: that of a verdict. */
  readonly accuracy?: Accuracy;
  /** Other spreads than the assumed ones; 0 takes an input for exactly known. */
  readonly spreads?: Spreads;
}

export const DEFAULT_DRAWS = 64;
export const FEWEST_RUNS = 16;
export const MOST_RUNS = 512;
/** If fewer of the draws than this could be computed, the missing draws may be those that matter. */
const LEAST_SHARE = 0.8;
/** How far the work is after the runs [-]. */
export const RUNS_SHARE = 0.97;

/** Too many draws could not be computed: nothing can be said. */
class TooFewRuns extends Error {}

/** Why there is nothing to work out of a what-if; undefined when there is. */
export function noChances({ rig }: Assessed, whatIf: WhatIf): NoChances | undefined {
  const failing = whatIf.kind === "rescue" ? whatIf.during : whatIf;
  if (failing?.kind === "mainFails" && !rig.backup) return { kind: "noBackup" };
  if (whatIf.kind === "givesWay") return { kind: "afterPart", part: whatIf.part };
  const missing = missingIn(whatIf, rig);
  return missing && { kind: "missing", missing };
}

/** Nothing can be worked out: `why` says it as a fact. */
export class ChancesImpossible extends Error {
  readonly why: NoChances;

  constructor(why: NoChances) {
    super(`There are no chances to work out: ${why.kind}.`);
    this.why = why;
  }
}

/** A checked question, and the runs that answer it. */
export interface ChancesPlan {
  readonly options: ChancesOptions & { readonly runs: number; readonly seed: number; readonly accuracy: Accuracy };
  readonly inputs: readonly UncertainInput[];
  readonly samples: readonly DrawSample[];
  /** The what-if last; before it what must be run first, under the same draws. */
  readonly events: readonly [WhatIf, ...WhatIf[]];
}

/** What is to be run. Throws `ChancesImpossible` where there is nothing to work out, a RangeError for what cannot be asked. */
export function planChances(assessed: Assessed, asked: ChancesOptions): ChancesPlan {
  const { rig } = assessed;
  const options = { runs: DEFAULT_DRAWS, seed: SEED, accuracy: "standard", ...asked } as const;
  const { whatIf, runs, seed, spreads } = options;
  if (!Number.isInteger(runs) || runs < FEWEST_RUNS || runs > MOST_RUNS) {
    throw new RangeError(`Runs must be a whole number from ${FEWEST_RUNS} to ${MOST_RUNS}, got ${runs}.`);
  }
  const nothing = noChances(assessed, whatIf);
  if (nothing !== undefined) throw new ChancesImpossible(nothing);
  const inputs = uncertainInputs(rig, whatIf, spreads);
  if (inputs.length === 0) throw new RangeError("Every spread is 0: nothing is uncertain but the strengths.");
  const samples = new Sampler(rig, { seed, ...(spreads ? { spreads } : {}) }).draws(whatIf, 0, runs);
  const events: [WhatIf, ...WhatIf[]] = [whatIf];
  for (let before = eventBefore(whatIf); before; before = eventBefore(before)) events.unshift(before);
  return { options, inputs, samples, events };
}

/**
 * Orders of one of the plan's events, by number, under every draw. `before`: results of the event before it. Of a draw whose run before
 * failed nothing is ordered: that failure is its result.
 */
export function ordersOf(
  { options, samples, events }: ChancesPlan,
  number: number,
  before: readonly RunResult[],
): readonly (RunOrder | undefined)[] {
  return samples.map(({ draw }, i): RunOrder | undefined => {
    const earlier = before[i];
    if (earlier && !earlier.ok) return undefined;
    return { event: events[number]!, draw, accuracy: options.accuracy, ...(earlier ? { before: earlier } : {}) };
  });
}

/** Works the chances out in the caller's thread. Every `next()` does a few milliseconds of work; stop by not calling it again. */
export function* chances(assessed: Assessed, asked: ChancesOptions): Generator<StudyProgress, Chances, void> {
  const plan = planChances(assessed, asked);
  const strengths = rigStrengths(assessed.rig, assessed.tests);
  const { events, samples } = plan;
  let results: readonly RunResult[] = [];
  let told = 0;
  for (const [e, event] of events.entries()) {
    const made: RunResult[] = [];
    for (const [i, order] of ordersOf(plan, e, results).entries()) {
      const work = order && executeRun(assessed.rig, strengths, order);
      let step = work?.next();
      for (; work && step && !step.done; step = work.next()) {
        // A run that has to be made again begins anew; what is shown never goes back.
        told = Math.max(told, (e + (i + step.value) / samples.length) / events.length);
        yield { done: RUNS_SHARE * told, doing: event };
      }
      made.push(step?.done ? step.value : results[i]!);
    }
    results = made;
  }
  return yield* chancesFrom(assessed, plan, results);
}

/** Works the chances out from the runs of a plan, in the order of its draws. Every `next()` does a few milliseconds of work. */
export function* chancesFrom(
  assessed: Assessed,
  { options, inputs, samples }: ChancesPlan,
  results: readonly RunResult[],
): Generator<StudyProgress, Chances, void> {
  const { rig } = assessed;
  const { whatIf, runs: asked, seed } = options;
  const strengths = rigStrengths(rig, assessed.tests);
  const all = loadedParts(rig, strengths);
  const drawn = drawnRuns({ whatIf, strengths, parts: all, samples }, results);
  if (drawn.loads.length < LEAST_SHARE * asked) throw tooFew(drawn, asked);
  const kept = worthKeeping(all, drawn.loads);
  const parts = kept.map((i) => all[i]!);
  const loads = drawn.loads.map((row) => kept.map((i) => row[i]!));
  const work = failureChances(
    parts.map(({ part }) => part),
    { deviates: drawn.deviates, loads },
    { seed },
  );
  let step = work.next();
  for (; !step.done; step = work.next()) yield { done: RUNS_SHARE + (1 - RUNS_SHARE) * step.value, step: "chances" };
  const dropped = droppedStretches(all, kept);
  return conclude(assessed, options, { asked, drawn, loads, inputs, strengths, parts, dropped, found: step.value });
}

function tooFew({ loads, failed }: DrawnRuns, asked: number): TooFewRuns {
  const reasons = [...new Set(failed)].slice(0, 3).join(" ");
  return new TooFewRuns(
    `Only ${loads.length} of ${asked} draws could be computed reliably: too few to say anything. ${reasons}`,
  );
}

/** All that was found on the way. */
interface Found {
  readonly asked: number;
  readonly drawn: DrawnRuns;
  /** Load of each of `parts`, one row per draw [N]. */
  readonly loads: readonly (readonly number[])[];
  readonly inputs: readonly UncertainInput[];
  readonly strengths: RigStrengths;
  readonly parts: readonly LoadedPart[];
  readonly dropped: Chances["dropped"];
  readonly found: FailureChances;
}

function conclude(
  assessed: Assessed,
  options: ChancesOptions & { readonly seed: number; readonly accuracy: Accuracy },
  all: Found,
): Chances {
  const { rig } = assessed;
  const { asked, drawn, inputs, strengths, found, dropped } = all;
  const { whatIf, seed, accuracy } = options;
  const done = drawn.loads.length;
  const counted = (count: number) => ({ count, chance: countedShare(count, done) });
  return {
    rigName: rig.name,
    span: rig.span,
    invented: rig.invented,
    taken: assessed.taken,
    whatIf,
    key: whatIfKey(whatIf),
    accuracy,
    seed,
    inputHash: inputHash({ assessment: assessed.hash, ...options }),
    runs: { asked, done, lost: counted(drawn.lost), ground: counted(drawn.ground), failed: drawn.failed },
    anyFails: found.anyFails,
    parts: partsOf(all),
    shares: sharesOf(all),
    inputs,
    dropped,
    judged: judgedFactors(strengths.parts, new Map()),
    anchors: anchorFacts(rig, strengths.parts, { A: 0, B: 0 }),
    groundKnown: rig.ground.length > 1,
  };
}

function partsOf({ parts, loads, found }: Found): readonly PartChance[] {
  // One run alone is a matter of chance, so the chances are told with the middle of all runs.
  const middle = medianLoads(loads);
  return found.parts
    .map(({ id, first, fails, stretch, loaded }): PartChance => {
      const i = parts.findIndex(({ part }) => part.id === (stretch ?? id));
      const { part, zone } = parts[i]!;
      const where = zone && { stretch: { from: zone.from, to: zone.to, reason: zone.reason } };
      return { id: id as PartId, load: middle[i]!, strength: part.median, ...where, first, fails, loaded };
    })
    .sort((a, b) => b.first.value - a.first.value || a.strength / a.load - b.strength / b.load);
}

function sharesOf({ parts, inputs, found: { shares } }: Found): Chances["shares"] {
  const { part, zone } = parts.find((one) => one.part.id === shares.of)!;
  const named = (source: VarianceSource): Pick<ScatterShare, "kind" | "name"> => {
    switch (source.kind) {
      case "input":
        return { kind: "input", name: inputs.find(({ id }) => id === INPUT_IDS[source.input])!.name };
      case "chance":
        return { kind: "chance" };
      case "strength":
        return { kind: "strength", name: source.name };
    }
  };
  return {
    part: (part.stretchOf?.id ?? part.id) as PartId,
    ...(zone ? { reason: zone.reason } : {}),
    sources: shares.sources.map(({ source, ...rest }) => ({ ...named(source), ...rest })),
  };
}
