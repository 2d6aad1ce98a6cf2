/**
 * How likely each part is to fail, and to be the first, in one what-if: real runs over a spread of the uncertain inputs, a
 * surface through their loads, and many draws of inputs and strengths from there. In slices, like `study`.
 */
import type { Accuracy } from "@secondline/engine";
import type { PartId } from "@secondline/rig";
import {
  correctionFactors,
  countedLoad,
  type FailureChances,
  failureChances,
  latinHypercube,
  type PartStrength,
  type ReliabilityPart,
  seededRandom,
} from "@secondline/strength";
import type { Assessed } from "../assessment/assessment.ts";
import { inputHash } from "../assessment/inputHash.ts";
import { missingIn, type WhatIf, whatIfKey } from "../events/registry.ts";
import { anchorFacts, judgedFactors } from "../facts/cautionFacts.ts";
import type { Probability } from "../facts/outcome.ts";
import { rigStrengths } from "../rigStrengths.ts";
import { type Spreads, surfaceInput, type UncertainInput, uncertainInputs } from "../scatter/inputs.ts";
import type { StudyProgress } from "../search/study.ts";
import type { Chances, NoChances, PartChance } from "./chancesOutcome.ts";
import { droppedStretches, type KeptStretches, type LoadedPart, loadedParts, worthKeeping } from "./loadedParts.ts";
import { medianLoads, oneRun, type SpreadRuns, type SpreadRunsOptions, spreadRuns } from "./simulatedLoads.ts";

export interface ChancesOptions {
  readonly whatIf: WhatIf;
  /** Simulated runs; default 96. */
  readonly runs?: number;
  /** The same seed gives the same answer. */
  readonly seed?: number;
  readonly accuracy?: Accuracy;
  /** Other spreads than the assumed ones; 0 takes an input for exactly known. */
  readonly spreads?: Spreads;
}

const DEFAULT_RUNS = 96;
export const FEWEST_RUNS = 12;
export const MOST_RUNS = 500;
/** Any number: the same one, so that the same rig gives the same answer. */
const DEFAULT_SEED = 20_260_701;
/** With fewer of the runs computed the others may be missing where it matters. */
const LEAST_SHARE = 0.8;

/** Progress of a part of the work, as a stretch of the whole. */
function* shareOf<T>(
  work: Generator<number, T, void>,
  from: number,
  to: number,
  doing: string,
): Generator<StudyProgress, T, void> {
  let step = work.next();
  for (; !step.done; step = work.next()) yield { done: from + (to - from) * step.value, step: doing };
  return step.value;
}

/** Too many runs could not be computed: nothing can be said. */
class TooFewRuns extends Error {}

/** Why there is nothing to work out of a what-if; undefined when there is. */
export function noChances({ rig }: Assessed, whatIf: WhatIf): NoChances | undefined {
  if (whatIf.kind === "mainFails" && !rig.backup) return { kind: "noBackup" };
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

/** Every `next()` does a few milliseconds of work, some tenths of a second at the end; stop by not calling it again. */
export function* chances(assessed: Assessed, options: ChancesOptions): Generator<StudyProgress, Chances, void> {
  const { rig } = assessed;
  const { whatIf, runs: asked = DEFAULT_RUNS, seed = DEFAULT_SEED, accuracy = "quick" } = options;
  if (!Number.isInteger(asked) || asked < FEWEST_RUNS || asked > MOST_RUNS) {
    throw new RangeError(`Runs must be a whole number from ${FEWEST_RUNS} to ${MOST_RUNS}, got ${asked}.`);
  }
  const nothing = noChances(assessed, whatIf);
  if (nothing !== undefined) throw new ChancesImpossible(nothing);
  const strengths = rigStrengths(rig, assessed.tests);
  const inputs = uncertainInputs(rig, whatIf, options.spreads);
  if (inputs.length === 0) throw new RangeError("Every spread is 0: nothing is uncertain but the strengths.");
  const all = loadedParts(rig, strengths);
  const job: SpreadRunsOptions = { rig, whatIf, strengths, inputs, parts: all, accuracy };
  const centre = inputs.map(() => 0);
  const points = [centre, ...latinHypercube(asked - 1, inputs.length, seededRandom(seed))];
  const simulated = yield* spreadRuns(job, points, RUNS_SHARE);
  if (simulated.loads.length < LEAST_SHARE * asked) throw tooFew(simulated, asked);
  const finer = accuracy === "quick" ? yield* finerMesh(job, simulated) : [];
  const kept = worthKeeping(all, simulated.loads);
  const parts = kept.map((i) => all[i]!);
  const of = (rows: readonly (readonly number[])[]) => rows.map((row) => kept.map((i) => row[i]!));
  const runs = { points: simulated.points, loads: of(simulated.loads), corrections: of(finer) };
  const work = failureChances(inputs.map(surfaceInput), parts.map(reliability), runs, { seed });
  const found = yield* shareOf(work, MESH_SHARE, 1, "draws");
  return conclude(
    assessed,
    { ...options, seed, accuracy },
    {
      asked,
      simulated,
      finer: of(finer),
      inputs,
      strengths: strengths.parts,
      parts,
      kept,
      dropped: droppedStretches(all, kept),
      found,
    },
  );
}

/** How far the work is after the runs, and after those on a finer mesh [-]. */
const RUNS_SHARE = 0.7;
const MESH_SHARE = 0.92;

const reliability = (one: LoadedPart): ReliabilityPart => one.part;

function tooFew({ loads, failed }: SpreadRuns, asked: number): TooFewRuns {
  const reasons = [...new Set(failed)].slice(0, 3).join(" ");
  return new TooFewRuns(
    `Only ${loads.length} of ${asked} runs could be computed reliably: too few to say anything. ${reasons}`,
  );
}

/** One in so many runs, within limits, is made on the standard mesh too, to see by what that changes the loads. */
const RUNS_PER_MESH_RUN = 16;
const FEWEST_MESH_RUNS = 2;
const MOST_MESH_RUNS = 6;

/**
 * Of some runs, ln of every load on the standard mesh over that on the coarse one, both as the surfaces take them, so that the
 * noise of a slack line is no change; runs that fail are left out. None when only
 * one is left: how far its change may be off could not be told.
 */
function* finerMesh(
  job: SpreadRunsOptions,
  { loads, points }: SpreadRuns,
): Generator<StudyProgress, readonly (readonly number[])[], void> {
  const found: number[][] = [];
  const wanted = Math.floor(loads.length / RUNS_PER_MESH_RUN);
  const count = Math.min(MOST_MESH_RUNS, Math.max(FEWEST_MESH_RUNS, wanted));
  for (let r = 0; r < count; r++) {
    const [from, to] = [r, r + 1].map((n) => RUNS_SHARE + ((MESH_SHARE - RUNS_SHARE) * n) / count);
    const fine = yield* oneRun({ ...job, accuracy: "standard" }, points[r]!, from!, to!);
    if (typeof fine === "string") continue;
    found.push(fine.loads.map((load, i) => loadChange(job.parts[i]!.part, loads[r]![i]!, load)));
  }
  return found.length < FEWEST_MESH_RUNS ? [] : steadied(found);
}

/**
 * A few noisy runs say little of one part alone: its mean is drawn towards that of the middle part, all the way where it lies
 * within its standard error of it, and hardly where it lies far off (James and Stein's rule, its positive part). How the runs
 * scatter about their mean stays as it was. One row per run, one column per part; ln of loads.
 */
export function steadied(rows: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const count = rows.length;
  const means = rows[0]!.map((_, i) => rows.reduce((sum, row) => sum + row[i]!, 0) / count);
  const middle = [...means].sort((a, b) => a - b)[Math.floor((means.length - 1) / 2)]!;
  const shifts = means.map((mean, i) => {
    const away = mean - middle;
    const variance = rows.reduce((sum, row) => sum + (row[i]! - mean) ** 2, 0) / (count * (count - 1));
    return away === 0 ? 0 : away * (Math.max(0, 1 - variance / away ** 2) - 1);
  });
  return rows.map((row) => row.map((change, i) => change + shifts[i]!));
}

/** ln of one load of a part over another, both as the surfaces take them [-]. */
export const loadChange = (part: ReliabilityPart, from: number, to: number): number =>
  Math.log(countedLoad(part, to) / countedLoad(part, from));

/** All that was found on the way. */
interface Found {
  readonly asked: number;
  readonly simulated: SpreadRuns;
  /** ln of loads on the finer mesh over those on the coarse one, for each of `parts`, one row per run made twice. */
  readonly finer: readonly (readonly number[])[];
  readonly inputs: readonly UncertainInput[];
  readonly strengths: readonly PartStrength[];
  readonly parts: readonly LoadedPart[];
  /** Index of each of `parts` among the loads of a simulated run. */
  readonly kept: readonly number[];
  readonly dropped: readonly KeptStretches[];
  readonly found: FailureChances;
}

function conclude(
  assessed: Assessed,
  options: ChancesOptions & { readonly seed: number; readonly accuracy: Accuracy },
  all: Found,
): Chances {
  const { rig } = assessed;
  const { asked, simulated, inputs, strengths, parts, found, dropped } = all;
  const { whatIf, seed, accuracy } = options;
  const { lost, ground, failed } = simulated;
  const anyFails = anyOf(found);
  const mesh = correctionFactors(parts.map(reliability), { corrections: all.finer });
  const surfaces = found.surfaces.map(({ error, limit, explained, matters }, i) => ({
    part: wholeId(parts[i]!),
    ...(parts[i]!.zone ? { reason: parts[i]!.zone.reason } : {}),
    error,
    limit,
    explained,
    matters,
  }));
  const changes = mesh.filter((_, i) => found.surfaces[i]!.matters).map((factor) => Math.abs(factor - 1));
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
    runs: { asked, done: simulated.loads.length, lost, ground, failed },
    method: found.method,
    anyFails,
    parts: partsOf(all, mesh, anyFails),
    shares: [...found.shares].sort((a, b) => b.first.value - a.first.value),
    inputs,
    surfaces,
    grounds: {
      draws: found.first.runs,
      dropped,
      ...(all.finer.length === 0 ? {} : { meshChange: { runs: all.finer.length, most: Math.max(...changes) } }),
      ...(found.beyond === undefined ? {} : { beyond: found.beyond }),
    },
    judged: judgedFactors(strengths, new Map()),
    anchors: anchorFacts(rig, strengths, { A: 0, B: 0 }),
    groundKnown: rig.ground.length > 1,
  };
}

const wholeId = ({ part }: LoadedPart): PartId => (part.stretchOf?.id ?? part.id) as PartId;

/** No part fails more often than some part does, which is known down to smaller chances. */
const within = (part: Probability, any: Probability): Probability =>
  part.value > 0 ? part : { ...part, high: Math.min(part.high, any.high) };

function anyOf({ small, first }: FailureChances): Chances["anyFails"] {
  if (!small) return { ...first.anyFails, sampling: "plain", reached: first.anyFails.value > 0 };
  const { value, low, high, spread, reached } = small;
  return { value, low, high, sampling: "conditional", reached, ...(reached ? { spread } : {}) };
}

function partsOf(
  { parts, simulated, found, kept }: Found,
  mesh: readonly number[],
  any: Probability,
): readonly PartChance[] {
  // One run alone is noisy: the middle of all of them goes with the chances.
  const middle = medianLoads(simulated);
  return found.first.parts
    .map(({ id, first, fails, stretch }): PartChance => {
      const i = parts.findIndex(({ part }) => part.id === (stretch ?? id));
      const { part, zone } = parts[i]!;
      const where = zone && { stretch: { from: zone.from, to: zone.to, reason: zone.reason } };
      return {
        id: id as PartId,
        load: middle[kept[i]!]! * mesh[i]!,
        strength: part.median,
        ...where,
        first,
        fails: within(fails, any),
      };
    })
    .sort((a, b) => b.first.value - a.first.value || a.strength / a.load - b.strength / b.load);
}
