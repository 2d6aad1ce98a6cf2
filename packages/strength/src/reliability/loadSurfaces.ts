/**
 * Loads from a set of real runs, as a function of the uncertain inputs: a surface through the logarithm of every load, and
 * what the surfaces miss as a random term of its own.
 */
import { choleskyRoot } from "./cholesky.ts";
import type { RandomInput, ReliabilityModel, ReliabilityPart } from "./model.ts";
import { centred, fitSurface, type ResponseSurface } from "./responseSurface.ts";

/** An uncertain input, by its coordinate: −1 to 1 over the range in which runs were made. */
export interface SurfaceInput {
  readonly name: string;
  /** Coordinate for a standard normal deviate. */
  readonly coordinate: (deviate: number) => number;
}

export interface SimulatedLoads {
  /** Coordinates of the inputs in every run [-]. */
  readonly points: readonly (readonly number[])[];
  /** Load of every part in every run, one row per run [N]. */
  readonly loads: readonly (readonly number[])[];
  /**
   * Of runs that were made once more in a better way: ln of every part's better load over its load, one row per such run.
   * Their mean corrects all loads; how little so few runs say of it is carried as error.
   */
  readonly corrections?: readonly (readonly number[])[];
}

export interface LoadSurfaces {
  readonly model: ReliabilityModel;
  /** The surface that gives each part's load, in the order of the parts. */
  readonly surfaces: readonly ResponseSurface[];
}

export const SURFACE_ERROR = "what the surfaces miss";

/**
 * A part that holds so many times its load is never first to fail, whether that load is small or next to nothing: loads
 * below that share of the strength are taken as that share, for the little whips of a slack line follow no polynomial [-].
 */
const FAR = 20;

/**
 * The error of the surfaces is normal in ln load, with the covariance of the residuals of runs left out: loads that are
 * missed together in the runs are missed together in the model.
 */
export function loadSurfaces(
  inputs: readonly SurfaceInput[],
  parts: readonly ReliabilityPart[],
  runs: SimulatedLoads,
): LoadSurfaces {
  const logs = parts.map((part, i) => flooredLogs(part, i, runs));
  const channels = distinct(logs);
  const fitted = channels.map(({ values }) => fitSurface(runs.points, values));
  const root = choleskyRoot(errorCovariance(fitted, channels, runs));
  const factors = correctionFactors(parts, runs);
  const channelOf = logs.map((values) => channels.findIndex((one) => offset(values, one.values) !== undefined));
  const shift = logs.map((values, i) => offset(values, channels[channelOf[i]!]!.values)!);
  const d = inputs.length;
  const loads = (x: readonly number[]): number[] => {
    const heights = fitted.map((surface, c) => {
      let height = surface.value(x);
      for (let k = 0; k <= c; k++) height += root[c]![k]! * x[d + k]!;
      return height;
    });
    return channelOf.map((c, i) => factors[i]! * Math.exp(heights[c]! + shift[i]!));
  };
  const errors: RandomInput[] = channels.map(() => ({ name: SURFACE_ERROR, value: (u) => u }));
  const randoms = inputs.map(({ name, coordinate }): RandomInput => ({ name, value: coordinate }));
  return {
    model: { inputs: [...randoms, ...errors], parts, loads },
    surfaces: channelOf.map((c) => fitted[c]!),
  };
}

function flooredLogs(part: ReliabilityPart, i: number, { loads }: SimulatedLoads): Float64Array {
  return Float64Array.from(loads, (row) => Math.log(countedLoad(part, row[i]!)));
}

/** A load as the surfaces take it [N]: next to nothing is next to nothing. */
export const countedLoad = ({ median }: ReliabilityPart, load: number): number => Math.max(load, median / FAR);

/** A load that others are a constant factor of; `part`: index of the first part that has it. */
interface Channel {
  readonly values: Float64Array;
  readonly part: number;
}

/** Loads that differ by a constant factor in all runs are one. */
function distinct(logs: readonly Float64Array[]): Channel[] {
  const found: Channel[] = [];
  logs.forEach((values, part) => {
    if (!found.some((one) => offset(values, one.values) !== undefined)) found.push({ values, part });
  });
  return found;
}

/** ln of the constant factor between two loads; undefined when there is none. */
function offset(a: Float64Array, b: Float64Array): number | undefined {
  const first = a[0]! - b[0]!;
  return a.every((value, r) => Math.abs(value - b[r]! - first) < 1e-9) ? first : undefined;
}

/** What the surfaces miss, and how far the mean of the corrections may be off. */
function errorCovariance(
  fitted: readonly ResponseSurface[],
  channels: readonly Channel[],
  { corrections = [] }: SimulatedLoads,
): number[][] {
  const missed = covariance(fitted.map((surface) => surface.leftOut));
  if (corrections.length < 2) return missed;
  const scatter = covariance(channels.map(({ part }) => centred(Float64Array.from(corrections, (row) => row[part]!))));
  return missed.map((row, i) => row.map((value, j) => value + scatter[i]![j]! / (corrections.length - 1)));
}

/** Mean squares and products of residuals about zero. */
function covariance(residuals: readonly ArrayLike<number>[]): number[][] {
  return residuals.map((a) => residuals.map((b) => Array.from(a).reduce((sum, e, r) => sum + e * b[r]!, 0) / a.length));
}

/** By what the corrections change every part's load [-]. */
export function correctionFactors(
  parts: readonly ReliabilityPart[],
  { corrections = [] }: Pick<SimulatedLoads, "corrections">,
): number[] {
  return parts.map((_, i) =>
    corrections.length === 0 ? 1 : Math.exp(corrections.reduce((sum, row) => sum + row[i]!, 0) / corrections.length),
  );
}
