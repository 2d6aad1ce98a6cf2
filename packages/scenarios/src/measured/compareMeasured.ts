/** Holds a load cell's recording against the model's draws of the same fall: alignment, peak, impulse and spread. Facts, no sentences. */
import { cfc60 } from "@secondline/engine";
import { median } from "../scatter/median.ts";
import { type Aligned, aligned, COMPARED_RATE, catchWindow, resampled } from "./align.ts";
import { FILTER_RATE } from "./evenSamples.ts";
import type { ModelSignals } from "./modelSignals.ts";
import type { MeasuredFall, RecordingNote } from "./recording.ts";

/** One number of the recording among those of the draws. */
export interface Among {
  /** The recording's number; with `atLeast` the true number is at least this. */
  readonly measured: number;
  readonly atLeast: boolean;
  readonly draws: readonly number[];
  readonly median: number;
  readonly low: number;
  readonly high: number;
  /** Draws that lie below the recording. */
  readonly below: number;
  /** Where the recording lies among the draws; "open" when it is known from one side only and that does not decide. */
  readonly place: "below" | "within" | "above" | "open";
}

export interface MeasuredComparison {
  readonly fall: Omit<MeasuredFall, "force" | "notes"> & { readonly duration: number };
  readonly draws: number;
  readonly failed: readonly string[];
  /** Where in the recording the model's first moment lies, in the middle of the draws [s], and how far the draws differ in it [s]. */
  readonly alignment: { readonly at: number; readonly spread: number; readonly off: number };
  /** Largest force over the catch [N]. */
  readonly peak: Among;
  /** Time integral of the force over the catch [N·s]; absent where the recording does not cover it. */
  readonly impulse?: Among;
  /** Why a number is only a least value: notes that bear on the catch. */
  readonly inCatch: readonly RecordingNote[];
  /** A force outside of the catch that is larger than its peak [N], and when [s]: maybe another fall, or the one that was meant. */
  readonly elsewhere?: { readonly force: number; readonly at: number };
  readonly notes: readonly RecordingNote[];
}

export type MeasuredResult =
  | { readonly ok: true; readonly comparison: MeasuredComparison }
  /** No draw could be computed, or the recording nowhere covers half of a catch. */
  | { readonly ok: false; readonly why: "noDraws" | "noOverlap" };

interface Laid extends Aligned {
  readonly peak: number;
  readonly impulse: number;
  readonly own: { readonly peak: number; readonly impulse: number | undefined };
  readonly from: number;
  readonly to: number;
}

export function compareMeasured(fall: MeasuredFall, { signals, failed }: ModelSignals): MeasuredResult {
  if (signals.length === 0) return { ok: false, why: "noDraws" };
  const recording = resampled(filtered(fall), fall.rate);
  const laid = signals.flatMap(({ force, rate }) => laidOver(resampled(force, rate), recording) ?? []);
  if (laid.length === 0) return { ok: false, why: "noOverlap" };
  // The nearest draw says where the catch of the recording is. The other draws are compared with the recording in that place.
  const nearest = laid.reduce((best, one) => (one.off < best.off ? one : best));
  const [from, to] = [nearest.from / COMPARED_RATE, nearest.to / COMPARED_RATE];
  const inCatch = fall.notes.filter((note) => isIn(note, from, to));
  const shifts = laid.map(({ shift }) => shift / COMPARED_RATE);
  const { force, notes, ...rest } = fall;
  const { impulse } = nearest.own;
  // Where the recording does not cover the whole catch the peak may lie in what is missing.
  const elsewhere = largerOutside(recording, nearest);
  const peakAtLeast = impulse === undefined || inCatch.length > 0 || elsewhere !== undefined;
  return {
    ok: true,
    comparison: {
      fall: { ...rest, duration: (force.length - 1) / fall.rate },
      draws: laid.length,
      failed,
      alignment: { at: median(shifts), spread: Math.max(...shifts) - Math.min(...shifts), off: nearest.off },
      peak: among(
        nearest.own.peak,
        peakAtLeast,
        laid.map(({ peak }) => peak),
      ),
      ...(impulse === undefined
        ? {}
        : {
            impulse: among(
              impulse,
              inCatch.length > 0,
              laid.map((one) => one.impulse),
            ),
          }),
      inCatch,
      ...(elsewhere === undefined ? {} : { elsewhere }),
      notes,
    },
  };
}

/** Stretches between gaps are filtered one by one, for the filter knows no gaps. */
function filtered({ force, rate, filtered: isFiltered }: MeasuredFall): Float64Array {
  if (isFiltered || rate < FILTER_RATE) return force;
  const out = Float64Array.from(force);
  let from = -1;
  for (let k = 0; k <= force.length; k++) {
    const isKnown = k < force.length && !Number.isNaN(force[k]!);
    if (isKnown && from < 0) from = k;
    if (isKnown || from < 0) continue;
    out.set(cfc60(force.subarray(from, k), rate), from);
    from = -1;
  }
  return out;
}

function laidOver(model: Float64Array, recording: Float64Array): Laid | undefined {
  const window = catchWindow(model);
  const found = aligned(model, window, recording);
  if (found === undefined) return undefined;
  const { shift } = found;
  const from = Math.max(0, window.from + shift);
  const to = Math.min(recording.length, window.to + shift);
  const own = recording.subarray(from, to);
  const whole = own.length === window.to - window.from && own.every((force) => !Number.isNaN(force));
  return {
    ...found,
    from,
    to,
    ...shapeOf(model.subarray(window.from, window.to)),
    own: { ...shapeOf(own), impulse: whole ? shapeOf(own).impulse : undefined },
  };
}

/** The largest force before and after the catch, if it is larger than the catch's. */
function largerOutside(recording: Float64Array, { from, to, own }: Laid): MeasuredComparison["elsewhere"] {
  let [force, at] = [own.peak, -1];
  recording.forEach((value, k) => {
    if ((k < from || k >= to) && value > force) [force, at] = [value, k];
  });
  return at < 0 ? undefined : { force, at: at / COMPARED_RATE };
}

/** Peak [N] and impulse [N·s] of a stretch; unknown samples are passed over. */
function shapeOf(force: Float64Array): { readonly peak: number; readonly impulse: number } {
  let [peak, sum] = [0, 0];
  for (const value of force) {
    if (Number.isNaN(value)) continue;
    sum += value;
    peak = Math.max(peak, value);
  }
  return { peak, impulse: sum / COMPARED_RATE };
}

/**
 * Whether something is wrong with the catch, so that it pulled at least what was measured. A zero that is off is so all along. What lies
 * between samples further apart than the filter allows is not known.
 */
function isIn(note: RecordingNote, from: number, to: number): boolean {
  switch (note.kind) {
    case "gap":
    case "overload":
    case "saturated":
      return note.from < to && note.to > from;
    case "slow":
    case "negative":
      return true;
    case "uneven":
      return note.most > 1 / FILTER_RATE;
    case "reversed":
    case "begins":
      return false;
  }
}

function among(measured: number, atLeast: boolean, draws: readonly number[]): Among {
  const [low, high] = [Math.min(...draws), Math.max(...draws)];
  const below = draws.filter((one) => one < measured).length;
  const place = measured > high ? "above" : atLeast ? "open" : measured < low ? "below" : "within";
  return { measured, atLeast, draws, median: median(draws), low, high, below, place };
}
