/**
 * From a set of simulated loads to the chances of failure: surfaces through the loads where they do, and where they do not,
 * the runs themselves.
 */
import { type FirstToFail, firstToFail } from "./firstToFail.ts";
import {
  correctionFactors,
  loadSurfaces,
  type SimulatedLoads,
  SURFACE_ERROR,
  type SurfaceInput,
} from "./loadSurfaces.ts";
import { type ReliabilityModel, type ReliabilityPart, uniformInput } from "./model.ts";
import { normalVector, seededRandom } from "./random.ts";
import { marginShares, type SobolIndex } from "./sobol.ts";
import { type SmallProbability, smallFailureProbability } from "./subsetSampling.ts";

/** How well the surface of one part's load does. */
export interface SurfaceQuality {
  /** Id of the part, or of the stretch of one. */
  readonly id: string;
  /** Root mean square of ln load missed, of runs left out: about the relative error [-]. */
  readonly error: number;
  /** Largest error at which the surface still does [-]. */
  readonly limit: number;
  /** Share of the variance of ln load that left-out runs are predicted with [-]. */
  readonly explained: number;
  readonly terms: number;
  /** Whether the part is first to fail often enough for the error to matter. */
  readonly matters: boolean;
}

/** What an index of `shares` is about. */
export type ShareKind = "input" | "surface" | "strength";

export interface FailureChances {
  /** "runs": a surface missed too much; chances are then counted over the simulated runs alone. */
  readonly method: "surface" | "runs";
  readonly first: FirstToFail;
  /** By conditional sampling, when plain sampling has too few failures to tell. */
  readonly small?: SmallProbability;
  /** Share of `small`'s failures for which some input lies outside of the simulated range [-]. */
  readonly beyond?: number;
  /** Share of every input, common cause and part's own scatter in the least margin; none without surfaces. */
  readonly shares: readonly (SobolIndex & { readonly kind: ShareKind })[];
  readonly surfaces: readonly SurfaceQuality[];
}

export interface ChancesOptions {
  readonly seed: number;
  /** Random draws from the surfaces; default 20 000. */
  readonly draws?: number;
  /** Rows of the sample matrices for the shares; default 1500. */
  readonly rows?: number;
}

const DRAWS = 20_000;
const ROWS = 1500;
/** With fewer failures among the draws, conditional sampling tells more. */
const FEW_FAILURES = 20;
/** Down to one in a hundred million: smaller ones mean nothing with spreads that nobody measured. */
const MOST_LEVELS = 8;
/**
 * A surface does when its error widens the scatter of the part's margin by a quarter at most, for then it is a detail beside
 * what the inputs and strengths do: when the variance of the error is at most (1.25² − 1) of theirs. The error is counted as
 * scatter, which makes small chances of failure larger; what a bad surface would spoil is who comes first, and why. An error
 * smaller than what the mesh leaves open is always fine [-].
 */
const ERROR_SHARE = 1.25 ** 2 - 1;
const ALWAYS_FINE = 0.02;
/** A part that is first less often than this matters to nobody's choice [-]. */
const WORTH_A_LOOK = 0.02;

/** Yields the share done. The same seed gives the same answer. */
export function* failureChances(
  inputs: readonly SurfaceInput[],
  parts: readonly ReliabilityPart[],
  runs: SimulatedLoads,
  options: ChancesOptions,
): Generator<number, FailureChances, void> {
  const { seed, draws = DRAWS, rows = ROWS } = options;
  const { model, surfaces } = loadSurfaces(inputs, parts, runs);
  yield 0.2;
  const first = firstToFail(model, { runs: draws, seed });
  yield 0.4;
  const limits = errorLimits(model, seed);
  const judged = parts.map((part, i): SurfaceQuality => {
    const { error, explained, terms } = surfaces[i]!;
    const whole = first.parts.find(({ id }) => id === (part.stretchOf ?? part).id)!;
    const matters = whole.first.value >= WORTH_A_LOOK && (part.stretchOf === undefined || whole.stretch === part.id);
    return { id: part.id, error, limit: limits[i]!, explained, terms, matters };
  });
  if (judged.some(({ matters, error, limit }) => matters && error > limit)) {
    const alone = firstToFail(runsModel(parts, runs), { runs: draws, seed, trials: runs.loads.length });
    return { method: "runs", first: alone, shares: [], surfaces: judged };
  }
  const plain = first.anyFails.value * draws >= FEW_FAILURES;
  const small = plain ? undefined : smallFailureProbability(model, { seed, mostLevels: MOST_LEVELS });
  yield 0.6;
  const indices = marginShares(model, { rows, seed });
  const shares = indices.map((index) => ({ ...index, kind: kindOf(index.name, inputs) }));
  const tail = small ? { small, beyond: outside(small.failures, inputs) } : {};
  return { method: "surface", first, ...tail, shares, surfaces: judged };
}

const kindOf = (name: string, inputs: readonly SurfaceInput[]): ShareKind =>
  name === SURFACE_ERROR ? "surface" : inputs.some((input) => input.name === name) ? "input" : "strength";

/** Draws for the scatter of the loads. */
const LIMIT_DRAWS = 500;

/** Of every part, how much its surface may miss [-]. */
function errorLimits(model: ReliabilityModel, seed: number): number[] {
  const random = seededRandom(seed);
  const logs = Array.from({ length: LIMIT_DRAWS }, () => {
    const u = normalVector(random, model.inputs.length);
    // What the inputs alone do: no error of the surfaces, and no scatter of the corrections, may raise its own limit.
    const drawn = model.inputs.map(({ name, value }, k) => (name === SURFACE_ERROR ? 0 : value(u[k]!)));
    return model.loads(drawn).map(Math.log);
  });
  return model.parts.map((part, i) => {
    const strength = Object.values(part.causes).reduce((sum, c) => sum + c * c, part.own * part.own);
    const mean = logs.reduce((sum, row) => sum + row[i]!, 0) / LIMIT_DRAWS;
    const scatter = logs.reduce((sum, row) => sum + (row[i]! - mean) ** 2, 0) / LIMIT_DRAWS;
    return Math.max(ALWAYS_FINE, Math.sqrt(ERROR_SHARE * (strength + scatter)));
  });
}

/** Loads of one of the runs, whichever: extremes come as often as anything between, which errs to the cautious side. */
function runsModel(parts: readonly ReliabilityPart[], runs: SimulatedLoads): ReliabilityModel {
  const factors = correctionFactors(parts, runs);
  const loads = runs.loads.map((row) => row.map((load, i) => load * factors[i]!));
  const last = loads.length - 1;
  return {
    inputs: [uniformInput("which run", 0, loads.length)],
    parts,
    loads: ([run]) => loads[Math.min(last, Math.floor(run!))]!,
  };
}

/** Share of samples for which an input lies outside of the range in which runs were made [-]. */
function outside(samples: readonly Float64Array[], inputs: readonly SurfaceInput[]): number {
  if (samples.length === 0) return 0;
  const out = samples.filter((u) => inputs.some(({ coordinate }, i) => Math.abs(coordinate(u[i]!)) > 1));
  return out.length / samples.length;
}
