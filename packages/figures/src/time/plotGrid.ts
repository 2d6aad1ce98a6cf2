import { extremes, type Pyramid } from "./pyramid.ts";

/** A stretch of a run [s]. */
export interface TimeRange {
  readonly from: number;
  readonly to: number;
}

/**
 * The places on the time axis at which traces are drawn, shared by all of them. `exact`: every sample of the range;
 * otherwise the range is cut into columns of samples and every column shows its two extremes in their order, so that
 * no peak can be lost, whatever the zoom. `edges` are sample indices at `rate`: one per sample, or two per column.
 */
export interface PlotGrid {
  readonly exact: boolean;
  readonly rate: number;
  readonly edges: Uint32Array;
  /** [s] */
  readonly times: Float64Array;
}

/** Up to this many samples per column are drawn one by one; more would fall on the same pixels anyway [-]. */
const EXACT_PER_COLUMN = 3;

/** Grid for `count` samples at `rate` [1/s] over `range`, about one column to a pixel; reaches one sample beyond. */
export function plotGrid(rate: number, count: number, range: TimeRange, columns: number): PlotGrid {
  const { first, end } = samplesAround(rate, count, range);
  const visible = end - first;
  if (visible <= columns * EXACT_PER_COLUMN) {
    const edges = Uint32Array.from({ length: visible }, (_, i) => first + i);
    return { exact: true, rate, edges, times: Float64Array.from(edges, (i) => i / rate) };
  }
  const edges = Uint32Array.from({ length: columns + 1 }, (_, c) => first + Math.floor((c * visible) / columns));
  const times = new Float64Array(columns * 2);
  for (let c = 0; c < columns; c++) {
    const width = edges[c + 1]! - edges[c]!;
    times[2 * c] = edges[c]! / rate;
    times[2 * c + 1] = (edges[c]! + width / 2) / rate;
  }
  return { exact: false, rate, edges, times };
}

/** Samples from the last one at or before the range to the first one at or after it. */
export function samplesAround(rate: number, count: number, range: TimeRange): { first: number; end: number } {
  const first = Math.min(Math.max(Math.floor(range.from * rate + ROUNDING_SAMPLES), 0), count);
  const end = Math.min(Math.max(Math.ceil(range.to * rate - ROUNDING_SAMPLES) + 1, first), count);
  return { first, end };
}

/** Samples within the range, its ends included. */
export function samplesWithin(rate: number, count: number, range: TimeRange): { first: number; end: number } {
  const first = Math.min(Math.max(Math.ceil(range.from * rate - ROUNDING_SAMPLES), 0), count);
  const end = Math.min(Math.max(Math.floor(range.to * rate + ROUNDING_SAMPLES) + 1, first), count);
  return { first, end };
}

/** A time this near to a sample's counts as that sample's [samples]. */
const ROUNDING_SAMPLES = 1e-6;

/** Values of a trace, of the grid's rate or another, on the grid; null where the trace has ended. */
export function valuesOn(grid: PlotGrid, pyramid: Pyramid, rate: number): (number | null)[] {
  return grid.exact ? samplesOn(grid, pyramid, rate) : columnsOn(grid, pyramid, rate);
}

function samplesOn(grid: PlotGrid, pyramid: Pyramid, rate: number): (number | null)[] {
  const { samples } = pyramid;
  return Array.from(grid.edges, (edge) => {
    const at = rate === grid.rate ? edge : Math.round((edge * rate) / grid.rate);
    return at < samples.length ? samples[at]! : null;
  });
}

function columnsOn(grid: PlotGrid, pyramid: Pyramid, rate: number): (number | null)[] {
  const { samples } = pyramid;
  const toSample = (edge: number) => (rate === grid.rate ? edge : Math.ceil((edge * rate) / grid.rate));
  const values: (number | null)[] = new Array(grid.times.length);
  for (let c = 0; c + 1 < grid.edges.length; c++) {
    const { minAt, maxAt } = extremes(pyramid, toSample(grid.edges[c]!), toSample(grid.edges[c + 1]!));
    const minFirst = minAt <= maxAt;
    values[2 * c] = minAt < 0 ? null : samples[minFirst ? minAt : maxAt]!;
    values[2 * c + 1] = minAt < 0 ? null : samples[minFirst ? maxAt : minAt]!;
  }
  return values;
}
