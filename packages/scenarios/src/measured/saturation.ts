/**
 * Whether the cell, or what records it, was at its limit: the largest value stands for longer than the top of a smooth peak does that was
 * written in steps. A smooth peak falls off as the square of the time, so the width of its top goes with the root of the depth below it.
 */
import type { RecordingNote } from "./recording.ts";

/** So many samples in a row at the largest value are no peak [-], and so long at least [s]. */
const LEAST_CLIPPED_SAMPLES = 4;
const LEAST_CLIPPED_TIME = 0.003;
/** Two values are the same to this share of the largest [-]. */
const SAME_FORCE_SHARE = 1e-6;
/** The steps in which a recording is written are looked for among its values above this share of the largest [-]. */
const UPPER_SHARE = 0.5;
/** Depth at which the width of the peak is taken: this share of the largest value, and so many steps at least [-]. */
const DEPTH_SHARE = 0.05;
const LEAST_DEPTH_STEPS = 8;
/** A top so many times as wide as that of a parabola is none of a smooth peak [-]. */
const MOST_TOP_RATIO = 1.25;

interface Sample {
  readonly time: number;
  readonly force: number;
}

/** `known`: samples with a number, their times growing; `usual`: time between two samples [s]. */
export function saturation(known: readonly Sample[], usual: number): readonly RecordingNote[] {
  const largest = known.reduce((most, { force }) => Math.max(most, force), 0);
  const isTop = ({ force }: Sample) => force >= largest * (1 - SAME_FORCE_SHARE);
  const top = longestRow(known, isTop);
  const count = top.to - top.from + 1;
  if (count < LEAST_CLIPPED_SAMPLES || count * usual < LEAST_CLIPPED_TIME) return [];
  if (!isWiderThanSmooth(known, top, largest)) return [];
  const [from, to] = [known.find(isTop)!.time, known.findLast(isTop)!.time];
  return [{ kind: "saturated", from, to, force: largest }];
}

/** First and last sample. */
interface Row {
  readonly from: number;
  readonly to: number;
}

function longestRow(known: readonly Sample[], isIn: (sample: Sample) => boolean): Row {
  let [best, from]: [Row, number] = [{ from: 0, to: -1 }, 0];
  known.forEach((sample, i) => {
    if (!isIn(sample)) from = i + 1;
    else if (i - from > best.to - best.from) best = { from, to: i };
  });
  return best;
}

/** Where the recording ends beside the top the peak is taken to be no wider: rather a cell at its limit than a peak that was higher. */
function isWiderThanSmooth(known: readonly Sample[], top: Row, largest: number): boolean {
  const step = stepOf(known, largest);
  const depth = Math.max(DEPTH_SHARE * largest, LEAST_DEPTH_STEPS * step);
  let { from, to } = top;
  while (from > 0 && known[from]!.force >= largest - depth) from -= 1;
  while (to < known.length - 1 && known[to]!.force >= largest - depth) to += 1;
  const wide = (row: Row) => known[row.to]!.time - known[row.from]!.time;
  return wide(top) > MOST_TOP_RATIO * Math.sqrt(step / depth) * wide({ from, to });
}

/** The least difference between two different values of the upper part [N]: many samples of a fine recording come close to each other. */
function stepOf(known: readonly Sample[], largest: number): number {
  const same = SAME_FORCE_SHARE * largest;
  const upper = known.map(({ force }) => force).filter((force) => force >= UPPER_SHARE * largest);
  const sorted = Float64Array.from(upper).sort();
  let least = largest;
  for (let i = 1; i < sorted.length; i++) {
    const by = sorted[i]! - sorted[i - 1]!;
    if (by > same && by < least) least = by;
  }
  return least === largest ? same : least;
}
