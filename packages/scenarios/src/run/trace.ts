/** Thins a recording's forces out for a small plot, keeping every peak. */
import { cfc60, type Recording } from "@secondline/engine";
import { anchorSignal } from "./loads.ts";

const BINS = 160;

/**
 * Force over time, thinned out for a small plot without losing a peak: per bin the least and the largest of the CFC 60
 * signal, alternating [N]. Bins of equal length over `duration` [s].
 */
export interface Trace {
  readonly duration: number;
  readonly bins: number;
  readonly leash: readonly number[];
  /** Main line and backup together, at either end. */
  readonly anchorA: readonly number[];
  readonly anchorB: readonly number[];
}

export function trace(recording: Recording): Trace {
  return {
    duration: recording.duration,
    bins: BINS,
    leash: envelope(cfc60(recording.signals.leash, recording.rate)),
    anchorA: envelope(anchorSignal(recording, "A")),
    anchorB: envelope(anchorSignal(recording, "B")),
  };
}

/** Least and largest value per bin, alternating, to the newton. */
function envelope(signal: Float64Array): readonly number[] {
  const out: number[] = [];
  for (let bin = 0; bin < BINS; bin++) {
    const from = Math.floor((bin * signal.length) / BINS);
    const to = Math.max(from + 1, Math.floor(((bin + 1) * signal.length) / BINS));
    let [least, largest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let i = from; i < Math.min(to, signal.length); i++) {
      least = Math.min(least, signal[i]!);
      largest = Math.max(largest, signal[i]!);
    }
    if (least <= largest) out.push(Math.round(least), Math.round(largest));
  }
  return out;
}
