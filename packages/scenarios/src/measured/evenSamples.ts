/** Lays the samples of a recording out evenly, and notes gaps, a saturated cell, and forces below zero. */
import type { RecordingNote } from "./recording.ts";
import { saturation } from "./saturation.ts";

/** An interval so many times as long as the usual one is a gap [-]. */
const GAP_INTERVAL_RATIO = 3;
/** A zero that is off by less than this share of the largest value is no news, nor is noise that goes below it in a few samples [-]. */
const ZERO_OFFSET_SHARE = 0.02;
const NEGATIVE_SAMPLES_SHARE = 0.01;
/** Below zero by this share of the largest value is told of a single sample [-]. */
const NEGATIVE_PEAK_SHARE = 0.05;
/** Rate that the filter of load cells needs [1/s]; below it nothing is filtered. */
export const FILTER_RATE = 600;
const MOST_RATE = 20_000;
/** Intervals that differ by more than this are told [-]. */
const UNEVEN_INTERVAL_RATIO = 1.5;

interface Sample {
  readonly time: number;
  readonly force: number;
  readonly overload?: boolean;
}

/** `samples`: at least two, their times growing. Forces are laid between neighbours on straight lines; NaN in gaps. */
export function evenSamples(samples: readonly Sample[]): {
  readonly force: Float64Array;
  readonly rate: number;
  readonly notes: readonly RecordingNote[];
} {
  const start = samples[0]!.time;
  const intervals = intervalsOf(samples);
  const usual = [...intervals].sort((a, b) => a - b)[Math.floor(intervals.length / 2)]!;
  const rate = Math.min(MOST_RATE, Math.round(1e6 / usual) / 1e6);
  const turned = isReversed(samples);
  const known = samples
    .filter(({ force }) => !Number.isNaN(force))
    .map(({ time, force }) => ({ time: time - start, force: turned ? -force : force }));
  const gaps = gapsIn(known, usual, samples.at(-1)!.time - start);
  const count = Math.floor((samples.at(-1)!.time - start) * rate * (1 + 1e-9)) + 1;
  return {
    force: laidOut(known, gaps, count, rate),
    rate,
    notes: [
      ...(Math.abs(start) > usual ? [{ kind: "begins", at: start } as const] : []),
      ...(turned ? [{ kind: "reversed" } as const] : []),
      ...unevenness(intervalsOf(known), usual),
      ...(rate < FILTER_RATE ? [{ kind: "slow", rate } as const] : []),
      ...gaps.map((gap) => ({ kind: "gap", ...gap }) as const),
      ...overloads(samples, start, usual),
      ...saturation(known, usual),
      ...belowZero(known),
    ],
  };
}

const intervalsOf = (samples: readonly Sample[]): readonly number[] =>
  samples.slice(1).map(({ time }, i) => time - samples[i]!.time);

/** Where the recorder wrote that the cell was beyond its limit, from the sample before to the sample after; what is nearer than a gap is one. */
function overloads(samples: readonly Sample[], start: number, usual: number): readonly RecordingNote[] {
  const found: { kind: "overload"; from: number; to: number }[] = [];
  samples.forEach(({ time, overload }, i) => {
    if (!overload) return;
    const from = (samples[i - 1]?.time ?? time) - start;
    const to = (samples[i + 1]?.time ?? time) - start;
    const last = found.at(-1);
    if (last && from - last.to <= GAP_INTERVAL_RATIO * usual) last.to = to;
    else found.push({ kind: "overload", from, to });
  });
  return found;
}

/** A line pulls one way: what is mostly and by far below zero was wired the other way round. */
function isReversed(samples: readonly Sample[]): boolean {
  let [least, most] = [0, 0];
  for (const { force } of samples) {
    if (force < least) least = force;
    if (force > most) most = force;
  }
  return -least > 5 * most;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Where no force is known for more than a few intervals. */
function gapsIn(known: readonly Sample[], usual: number, end: number): readonly Stretch[] {
  const times = [0, ...known.map(({ time }) => time), end];
  return times
    .slice(1)
    .map((to, i) => ({ from: times[i]!, to }))
    .filter(({ from, to }) => to - from > GAP_INTERVAL_RATIO * usual);
}

function laidOut(known: readonly Sample[], gaps: readonly Stretch[], count: number, rate: number): Float64Array {
  const out = new Float64Array(count).fill(Number.NaN);
  let [i, g] = [0, 0];
  for (let k = 0; k < count; k++) {
    const time = k / rate;
    while (i + 1 < known.length - 1 && known[i + 1]!.time < time) i += 1;
    while (g < gaps.length && gaps[g]!.to <= time) g += 1;
    const inGap = g < gaps.length && time > gaps[g]!.from && time < gaps[g]!.to;
    const [a, b] = [known[i], known[i + 1]];
    if (inGap || a === undefined || b === undefined) continue;
    const share = Math.min(1, Math.max(0, (time - a.time) / (b.time - a.time)));
    out[k] = a.force + share * (b.force - a.force);
  }
  return out;
}

function unevenness(intervals: readonly number[], usual: number): readonly RecordingNote[] {
  const near = intervals.filter((one) => one <= GAP_INTERVAL_RATIO * usual);
  const [least, most] = [Math.min(usual, ...extremes(near)), Math.max(usual, ...extremes(near))];
  return most / least > UNEVEN_INTERVAL_RATIO ? [{ kind: "uneven", least, most }] : [];
}

/** Least and largest, of lists too long for a call. */
function extremes(values: readonly number[]): readonly number[] {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return values.length === 0 ? [] : [least, most];
}

function belowZero(known: readonly Sample[]): readonly RecordingNote[] {
  const largest = known.reduce((most, { force }) => Math.max(most, force), 0);
  const below = known.filter(({ force }) => force < -ZERO_OFFSET_SHARE * largest);
  const least = below.reduce((lowest, { force }) => Math.min(lowest, force), 0);
  if (below.length <= NEGATIVE_SAMPLES_SHARE * known.length && least > -NEGATIVE_PEAK_SHARE * largest) return [];
  return [{ kind: "negative", least, samples: below.length }];
}
