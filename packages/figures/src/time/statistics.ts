import { samplesWithin, type TimeRange } from "./plotGrid.ts";
import { extremes, type Pyramid } from "./pyramid.ts";

/** Summary of a trace within a range: forces [N], times [s]. */
export interface RangeStatistics {
  readonly max: number;
  readonly maxTime: number;
  readonly min: number;
  readonly minTime: number;
  readonly mean: number;
}

/**
 * Summary over the samples within the range; null if it holds none (the trace ended before, or the range lies between two
 * samples).
 */
export function rangeStatistics(pyramid: Pyramid, rate: number, range: TimeRange): RangeStatistics | null {
  const { samples } = pyramid;
  const { first, end } = samplesWithin(rate, samples.length, range);
  const { minAt, maxAt } = extremes(pyramid, first, end);
  if (minAt < 0) return null;
  let sum = 0;
  for (let i = first; i < end; i++) sum += samples[i]!;
  return {
    max: samples[maxAt]!,
    maxTime: maxAt / rate,
    min: samples[minAt]!,
    minTime: minAt / rate,
    mean: sum / (end - first),
  };
}

/** One row of the table behind the plot: a single sample, or the largest force of an interval. */
export interface DataRow {
  /** [s] */
  readonly from: number;
  /** Start of the next row's interval; equal to `from` for a single sample [s]. */
  readonly to: number;
  /** Per trace [N]; null after its end. */
  readonly forces: readonly (number | null)[];
}

/** The range in at most `limit` rows, each with every trace's exact maximum over its interval. */
export function dataRows(
  pyramids: readonly Pyramid[],
  rate: number,
  range: TimeRange,
  limit: number,
): readonly DataRow[] {
  const count = Math.max(0, ...pyramids.map((pyramid) => pyramid.samples.length));
  const { first, end } = samplesWithin(rate, count, range);
  const rows = Math.min(limit, end - first);
  const edge = (row: number) => first + Math.floor((row * (end - first)) / rows);
  return Array.from({ length: rows }, (_, row) => {
    const [low, high] = [edge(row), edge(row + 1)];
    const forces = pyramids.map((pyramid) => {
      const { maxAt } = extremes(pyramid, low, high);
      return maxAt < 0 ? null : pyramid.samples[maxAt]!;
    });
    return { from: low / rate, to: (high - low === 1 ? low : high) / rate, forces };
  });
}
