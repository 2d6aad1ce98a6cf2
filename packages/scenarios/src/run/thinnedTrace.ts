/** Thins a recording's forces out for a small plot, keeping every peak; and the band of many such runs. */
import { cfc60, type Recording } from "@secondline/engine";
import { TRACE_LINES, type Trace, type TraceBand, type TraceLine } from "../facts/trace.ts";
import { anchorSignal } from "./loads.ts";

const BIN_COUNT = 160;

/** Fewer draws make no band [-]. */
const LEAST_DRAWS = 4;

export function trace(recording: Recording): Trace {
  const { signals, rate, duration } = recording;
  const signal = (line: TraceLine): Float64Array => {
    if (line === "anchorA" || line === "anchorB") return anchorSignal(recording, line === "anchorA" ? "A" : "B");
    return cfc60(signals[line], rate);
  };
  return { duration, bins: BIN_COUNT, ...linesBy((line) => envelope(signal(line))) };
}

/** Undefined for too few draws. Time counts from the beginning of each run. */
export function bandOf(traces: readonly Trace[]): TraceBand | undefined {
  if (traces.length < LEAST_DRAWS) return undefined;
  const duration = Math.min(...traces.map((one) => one.duration));
  return { draws: traces.length, duration, bins: BIN_COUNT, ...linesBy((line) => joined(traces, line, duration)) };
}

function linesBy(values: (line: TraceLine) => readonly number[]): Readonly<Record<TraceLine, readonly number[]>> {
  return Object.fromEntries(TRACE_LINES.map((line) => [line, values(line)])) as Record<TraceLine, readonly number[]>;
}

/** The least and the largest force in each bin, over all bins of the draws that reach into this bin. */
function joined(traces: readonly Trace[], line: TraceLine, duration: number): readonly number[] {
  return Array.from({ length: BIN_COUNT }, (_, bin) => {
    const ends = traces.flatMap((one) => {
      const perSecond = one.bins / one.duration;
      const from = Math.floor((bin * duration * perSecond) / BIN_COUNT + BIN_ROUNDING);
      const to = Math.min(
        one.bins,
        Math.max(from + 1, Math.ceil(((bin + 1) * duration * perSecond) / BIN_COUNT - BIN_ROUNDING)),
      );
      return one[line].slice(2 * from, 2 * to);
    });
    return [Math.min(...ends), Math.max(...ends)];
  }).flat();
}
/** Ends of bins that differ by less than this share of a bin are the same: they differ by rounding alone. */
const BIN_ROUNDING = 1e-9;

/** Least and largest value per bin, alternating, to the newton. */
function envelope(signal: Float64Array): readonly number[] {
  const out: number[] = [];
  for (let bin = 0; bin < BIN_COUNT; bin++) {
    const from = Math.floor((bin * signal.length) / BIN_COUNT);
    const to = Math.max(from + 1, Math.floor(((bin + 1) * signal.length) / BIN_COUNT));
    let [least, largest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let i = from; i < Math.min(to, signal.length); i++) {
      least = Math.min(least, signal[i]!);
      largest = Math.max(largest, signal[i]!);
    }
    if (least <= largest) out.push(Math.round(least), Math.round(largest));
  }
  return out;
}
