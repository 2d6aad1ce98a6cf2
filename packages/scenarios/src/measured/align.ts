/** Lays a model's signal over a recording: the shift at which they differ least over the model's catch. */

/** Both signals are compared at this rate [1/s]; a coarse search goes in larger steps. */
export const COMPARED_RATE = 1000;
const COARSE_STEP = 5;
/** Where a catch begins: this share of the way from where the signal begins to its peak [-]. */
const CATCH_START_SHARE = 0.1;
const HALF_RISE_SHARE = 0.5;
/** What is compared before and after that [s]. */
const TIME_BEFORE_CATCH = 0.1;
const TIME_AFTER_CATCH = 2.5;
/** Shifts are tried this far about the one that lays the first rise to half of the peak over the other [s]. */
const SHIFT_REACH = 1;
/** Share of the window that the recording must cover [-]. */
const LEAST_COVERED_SHARE = 0.5;

/** From sample `from` to `to`, not included. */
export interface Window {
  readonly from: number;
  readonly to: number;
}

/** A signal at `rate` at the rate of the comparison. Where samples are averaged they are so evenly; NaN stays NaN. */
export function resampled(force: Float64Array, rate: number): Float64Array {
  const count = Math.max(1, Math.floor(((force.length - 1) / rate) * COMPARED_RATE * (1 + 1e-9)) + 1);
  return Float64Array.from({ length: count }, (_, k) => {
    const at = (k / COMPARED_RATE) * rate;
    const i = Math.min(Math.floor(at + 1e-9), force.length - 1);
    const next = force[Math.min(i + 1, force.length - 1)]!;
    const share = Math.max(0, at - i);
    // A neighbour that is not known takes nothing from one that is.
    return share < 1e-6 ? force[i]! : force[i]! + share * (next - force[i]!);
  });
}

/** The model's catch: from where its force first rises. Later swings are not compared, for they follow from small things. */
export function catchWindow(signal: Float64Array): Window {
  const rise = firstRise(signal, CATCH_START_SHARE);
  const from = Math.max(0, rise - TIME_BEFORE_CATCH * COMPARED_RATE);
  return { from, to: Math.min(signal.length, rise + TIME_AFTER_CATCH * COMPARED_RATE) };
}

/** First sample above a share of the way from where the signal begins to its peak; 0 when none is. */
function firstRise(signal: Float64Array, share: number): number {
  const base = signal.find((force) => !Number.isNaN(force)) ?? 0;
  const peak = signal.reduce((most, force) => Math.max(force, most), base);
  return Math.max(
    0,
    signal.findIndex((force) => force > base + share * (peak - base)),
  );
}

export interface Aligned {
  /** Sample of the recording that lies over the model's first. */
  readonly shift: number;
  /** Root mean square of the difference over the window [N]. */
  readonly off: number;
}

/**
 * The shift near to that of the first rise at which the two have most of their shape in common (the correlation of what they carry beyond what
 * they carried before): a recording that pulls harder or softer than the model is laid over it all the same. `undefined` when the recording
 * nowhere covers enough of the window.
 */
export function aligned(model: Float64Array, window: Window, recording: Float64Array): Aligned | undefined {
  const bases = { model: model[0]!, recording: recording.find((force) => !Number.isNaN(force)) ?? 0 };
  const best = (from: number, to: number, step: number): number | undefined => {
    let found: { readonly shift: number; readonly common: number } | undefined;
    for (let shift = from; shift < to; shift += step) {
      const common = inCommon(model, window, recording, { shift, step, ...bases });
      if (common !== undefined && (found === undefined || common > found.common)) found = { shift, common };
    }
    return found?.shift;
  };
  const usual = firstRise(recording, HALF_RISE_SHARE) - firstRise(model, HALF_RISE_SHARE);
  const reach = SHIFT_REACH * COMPARED_RATE;
  const coarse = best(usual - reach, usual + reach, COARSE_STEP);
  if (coarse === undefined) return undefined;
  const shift = best(coarse - COARSE_STEP, coarse + COARSE_STEP + 1, 1) ?? coarse;
  return { shift, off: difference(model, window, recording, shift) };
}

interface Laying {
  readonly shift: number;
  readonly step: number;
  /** What either carries before the fall [N]. */
  readonly model: number;
  readonly recording: number;
}

/** Correlation over the window, 0 to 1 [-]. Beyond its ends a recording is taken to carry what it carried before the fall. */
function inCommon(
  model: Float64Array,
  { from, to }: Window,
  recording: Float64Array,
  { shift, step, ...bases }: Laying,
): number | undefined {
  let [product, ours, theirs, covered] = [0, 0, 0, 0];
  for (let k = from; k < to; k += step) {
    const force = recording[k + shift];
    if (Number.isNaN(force)) continue;
    const [m, r] = [model[k]! - bases.model, (force ?? bases.recording) - bases.recording];
    product += m * r;
    ours += m * m;
    theirs += r * r;
    if (force !== undefined) covered += 1;
  }
  if (covered * step < LEAST_COVERED_SHARE * (to - from)) return undefined;
  return product <= 0 ? 0 : product / Math.sqrt(ours * theirs);
}

/** Root mean square over what the recording knows of the window [N]. */
function difference(model: Float64Array, { from, to }: Window, recording: Float64Array, shift: number): number {
  let [sum, count] = [0, 0];
  for (let k = from; k < to; k++) {
    const force = recording[k + shift] ?? Number.NaN;
    if (Number.isNaN(force)) continue;
    sum += (force - model[k]!) ** 2;
    count += 1;
  }
  return Math.sqrt(sum / count);
}
