/**
 * How likely each part is to fail, and to be the first, in one what-if: real runs over a spread of the uncertain inputs, a
 * surface through their loads, and many draws of inputs and strengths from there. In slices, like `study`.
 */
import type { Accuracy } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import {
  type BreakTest,
  type FailureChances,
  failureChances,
  latinHypercube,
  type ReliabilityPart,
  seededRandom,
} from "@secondline/strength";
import { inputHash } from "../inputHash.ts";
import type { Probability, WhatIf } from "../outcome.ts";
import { rigStrengths } from "../rigStrengths.ts";
import { type StudyProgress, scaled } from "../runWhatIf.ts";
import { whatIfTitle } from "../whatIf.ts";
import type { Chances, PartChance } from "./chancesOutcome.ts";
import { chanceSentence } from "./chanceWords.ts";
import { chanceCautions, restsOn } from "./grounds.ts";
import { type LoadedPart, loadedParts, worthKeeping } from "./loadedParts.ts";
import { oneRun, type SpreadRuns, type SpreadRunsOptions, spreadRuns } from "./simulatedLoads.ts";
import { type Spreads, surfaceInput, type UncertainInput, uncertainInputs } from "./uncertainInputs.ts";

export interface ChancesOptions {
  readonly whatIf: WhatIf;
  /** Simulated runs; default 96. */
  readonly runs?: number;
  readonly seed?: number;
  readonly accuracy?: Accuracy;
  /** Other spreads than the assumed ones; 0 takes an input for exactly known. */
  readonly spreads?: Spreads;
  /** Own break tests, in place of published factors where there are some. */
  readonly breakTests?: readonly BreakTest[];
}

export const DEFAULT_RUNS = 96;
export const FEWEST_RUNS = 12;
export const MOST_RUNS = 500;
/** Any number: the same one, so that the same rig gives the same answer. */
export const DEFAULT_SEED = 20_260_701;
/** With fewer of the runs computed the others may be missing where it matters. */
const LEAST_SHARE = 0.8;

/** Too many runs could not be computed: nothing can be said. */
export class TooFewRuns extends Error {}

/** Why there is nothing to work out of a what-if; undefined when there is. */
export function noChances(rig: Rig, whatIf: WhatIf): string | undefined {
  return whatIf.kind === "mainFails" && !rig.backup
    ? "The rig has no backup: when the main line fails nothing catches the walker, whatever the parts hold."
    : undefined;
}

/** Every `next()` does a few milliseconds of work, some tenths of a second at the end; stop by not calling it again. */
export function* chances(rig: Rig, options: ChancesOptions): Generator<StudyProgress, Chances, void> {
  const { whatIf, runs: asked = DEFAULT_RUNS, seed = DEFAULT_SEED, accuracy = "quick" } = options;
  if (!Number.isInteger(asked) || asked < FEWEST_RUNS || asked > MOST_RUNS) {
    throw new RangeError(`Runs must be a whole number from ${FEWEST_RUNS} to ${MOST_RUNS}, got ${asked}.`);
  }
  const nothing = noChances(rig, whatIf);
  if (nothing !== undefined) throw new RangeError(nothing);
  const strengths = rigStrengths(rig, options.breakTests);
  const inputs = uncertainInputs(rig, whatIf, options.spreads);
  if (inputs.length === 0) throw new RangeError("Every spread is 0: nothing is uncertain but the strengths.");
  const all = loadedParts(rig, strengths);
  const job: SpreadRunsOptions = { rig, whatIf, strengths, inputs, parts: all, accuracy };
  const centre = inputs.map(() => 0);
  const points = [centre, ...latinHypercube(asked - 1, inputs.length, seededRandom(seed))];
  const simulated = yield* spreadRuns(job, points, RUNS_SHARE);
  if (simulated.loads.length < LEAST_SHARE * asked) throw tooFew(simulated, asked);
  const finer = yield* meshFactors(job, centre, simulated);
  const kept = worthKeeping(all, simulated.loads);
  const parts = kept.map((i) => all[i]!);
  const loads = simulated.loads.map((row) => kept.map((i) => row[i]! * (finer?.[i] ?? 1)));
  const found = yield* scaled(
    failureChances(inputs.map(surfaceInput), parts.map(reliability), { points: simulated.points, loads }, { seed }),
    MESH_SHARE,
    1,
    "Drawing strengths and inputs",
  );
  const matter = kept.filter((_, k) => found.surfaces[k]!.matters);
  const meshChange = finer && Math.max(0, ...matter.map((i) => Math.abs(finer[i]! - 1)));
  return conclude(rig, { ...options, seed, accuracy }, { asked, simulated, meshChange, inputs, parts, loads, found });
}

/** How far the work is after the runs, and after the one on a finer mesh [-]. */
const RUNS_SHARE = 0.85;
const MESH_SHARE = 0.93;

const reliability = (one: LoadedPart): ReliabilityPart => one.part;

function tooFew({ loads, failed }: SpreadRuns, asked: number): TooFewRuns {
  const reasons = [...new Set(failed)].slice(0, 3).join(" ");
  return new TooFewRuns(
    `Only ${loads.length} of ${asked} runs could be computed reliably: too few to say anything. ${reasons}`,
  );
}

/** A load that the finer mesh changes by more than this factor is noise in a slack line, not a coarse mesh's error [-]. */
const MOST_CHANGE = 1.5;

/**
 * By what the standard mesh changes the loads of the central run, to bring those of a coarse one up or down to it; undefined
 * when there is nothing to correct, or when that run failed.
 */
function* meshFactors(
  job: SpreadRunsOptions,
  centre: readonly number[],
  { loads, points }: SpreadRuns,
): Generator<StudyProgress, readonly number[] | undefined, void> {
  // The central run comes first, unless it failed.
  if (job.accuracy !== "quick" || points[0] !== centre) return undefined;
  const doing = "The central run on a finer mesh";
  const fine = yield* oneRun({ ...job, accuracy: "standard" }, centre, RUNS_SHARE, MESH_SHARE, doing);
  if (typeof fine === "string") return undefined;
  return fine.loads.map((load, i) => {
    const factor = load / loads[0]![i]!;
    return factor > 1 / MOST_CHANGE && factor < MOST_CHANGE ? factor : 1;
  });
}

/** All that was found on the way. */
interface Found {
  readonly asked: number;
  readonly simulated: SpreadRuns;
  readonly meshChange: number | undefined;
  readonly inputs: readonly UncertainInput[];
  readonly parts: readonly LoadedPart[];
  readonly loads: readonly (readonly number[])[];
  readonly found: FailureChances;
}

function conclude(
  rig: Rig,
  options: ChancesOptions & { readonly seed: number; readonly accuracy: Accuracy },
  all: Found,
): Chances {
  const { asked, simulated, inputs, parts, found } = all;
  const { whatIf, seed, accuracy } = options;
  const { lost, ground, failed } = simulated;
  const anyFails = anyOf(found);
  const partChances = partsOf(all, anyFails);
  const runs = { asked, done: simulated.loads.length, lost, ground, failed };
  const surfaces = found.surfaces.map(({ error, limit, explained, matters }, i) => ({
    name: parts[i]!.part.name,
    error,
    limit,
    explained,
    matters,
  }));
  const facts = { rig, accuracy, runs, inputs, surfaces, meshChange: all.meshChange, found, anyFails };
  return {
    rigName: rig.name,
    invented: rig.invented,
    whatIf,
    title: whatIfTitle(whatIf, rig.span),
    accuracy,
    seed,
    inputHash: inputHash({ rig, ...options }),
    runs,
    method: found.method,
    sentence: chanceSentence({ runs, anyFails, parts: partChances }),
    anyFails,
    parts: partChances,
    shares: [...found.shares].sort((a, b) => b.total.value - a.total.value),
    inputs,
    surfaces,
    restsOn: restsOn(facts),
    cautions: chanceCautions(facts),
  };
}

/** No part fails more often than some part does, which is known down to smaller chances. */
const within = (part: Probability, any: Probability): Probability =>
  part.value > 0 ? part : { ...part, high: Math.min(part.high, any.high) };

function anyOf({ small, first }: FailureChances): Chances["anyFails"] {
  if (!small) return { ...first.anyFails, sampling: "plain", reached: first.anyFails.value > 0 };
  const { value, low, high, spread, reached } = small;
  return { value, low, high, sampling: "conditional", reached, ...(reached ? { spread } : {}) };
}

function partsOf({ parts, loads, found }: Found, any: Probability): readonly PartChance[] {
  return found.first.parts
    .map(({ id, name, first, fails, stretch }): PartChance => {
      const i = parts.findIndex(({ part }) => part.id === (stretch ?? id));
      const { part, zone } = parts[i]!;
      const where = zone && { stretch: { from: zone.from, to: zone.to, reason: zone.reason } };
      return { id, name, load: loads[0]![i]!, strength: part.median, ...where, first, fails: within(fails, any) };
    })
    .sort((a, b) => b.first.value - a.first.value || a.strength / a.load - b.strength / b.load);
}
