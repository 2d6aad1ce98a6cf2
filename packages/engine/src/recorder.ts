/**
 * Keeps what a run shows, in arrays made once: force signals at 10 kHz (straight between steps), tensions of all elements at
 * about 1 kHz, positions for the eye at about 250 Hz. The two coarser rates fall on long or fine lines, so that a recording
 * stays within its memory.
 */
import { SIGNAL_RATE } from "./constants.ts";
import { PeakFinder, type Samples } from "./filteredPeak.ts";
import { COLUMN } from "./lineLayout.ts";
import type { Line } from "./model.ts";
import type { ElementPeaks, Peak } from "./recording.ts";

/** Numbers (4 bytes each) that positions and that tensions may take. */
const MOST_NUMBERS = 3_000_000;
/** Rate wanted for tensions, rate at which a filter of class 60 still works, and rate of frames [1/s]. */
const TENSION_RATE = 1000;
const CARRIES_CLASS = 600;
const FRAME_RATE = 250;

export class Recorder {
  readonly channels: readonly Float32Array[];
  readonly frameRate: number;
  readonly tensionRate: number;
  readonly positions: Float32Array;
  readonly tensions: Float32Array;
  readonly ringAt: Float32Array;
  samples = 0;
  frames = 0;
  tensionRows = 0;
  /** Times of the next frame and of the next row of tensions; infinite when there is no room for more [s]. */
  nextFrame = 0;
  nextRow = 0;
  readonly #step: number;
  #steps = 0;
  #nextSample = 0;
  readonly #lines: readonly Line[];
  readonly #m: Float64Array;
  readonly #last: Float64Array;
  readonly #perFrame: number;
  readonly #perRow: number;

  constructor(lines: readonly Line[], memory: Float64Array, duration: number, step: number, channels: number) {
    this.#lines = lines;
    this.#m = memory;
    this.#step = step;
    const nodes = lines.reduce((sum, line) => sum + line.nodes, 0);
    this.#perFrame = 3 * (nodes + 2);
    this.#perRow = lines.reduce((sum, line) => sum + line.elements, 0);
    this.frameRate = Math.min(FRAME_RATE, Math.max(25, MOST_NUMBERS / (this.#perFrame * duration)));
    this.tensionRate = Math.min(TENSION_RATE, Math.max(25, MOST_NUMBERS / (this.#perRow * duration)));
    const count = (rate: number) => Math.floor(duration * rate + 1e-6) + 1;
    this.channels = Array.from({ length: channels }, () => new Float32Array(count(SIGNAL_RATE)));
    this.positions = new Float32Array(count(this.frameRate) * this.#perFrame);
    this.ringAt = new Float32Array(count(this.frameRate) * 2);
    this.tensions = new Float32Array(count(this.tensionRate) * this.#perRow);
    this.#last = new Float64Array(channels);
  }

  /** Takes in the channel values of the next step, and fills the samples since the last. */
  sample(values: Float64Array): void {
    const { channels } = this;
    const last = this.#last;
    const step = this.#step;
    const t = this.#steps * step;
    for (; this.#nextSample <= t; this.samples++) {
      if (this.samples === channels[0]!.length) break;
      const share = t > 0 ? 1 - (t - this.#nextSample) / step : 1;
      for (let c = 0; c < last.length; c++) channels[c]![this.samples] = last[c]! + share * (values[c]! - last[c]!);
      this.#nextSample = (this.samples + 1) / SIGNAL_RATE;
    }
    for (let c = 0; c < last.length; c++) last[c] = values[c]!;
    this.#steps++;
  }

  /** Positions before the step that begins at `nextFrame` or first after it. */
  frame(ring: Float64Array, walker: Float64Array, ringOnMain: number, ringOnBackup: number): void {
    const m = this.#m;
    const out = this.positions;
    let o = this.frames * this.#perFrame;
    for (const { base, pitch, nodes } of this.#lines) {
      for (let i = 0; i < nodes; i++) {
        out[o++] = m[base + i]!;
        out[o++] = m[base + pitch + i]!;
        out[o++] = m[base + 2 * pitch + i]!;
      }
    }
    for (let c = 0; c < 3; c++) out[o++] = ring[c]!;
    for (let c = 0; c < 3; c++) out[o++] = walker[c]!;
    this.ringAt[2 * this.frames] = ringOnMain;
    this.ringAt[2 * this.frames + 1] = ringOnBackup;
    this.frames++;
    const room = (this.frames + 1) * this.#perFrame <= this.positions.length;
    this.nextFrame = room ? this.frames / this.frameRate : Number.POSITIVE_INFINITY;
  }

  /** Tensions of the step that began at `nextRow` or first after it. */
  row(): void {
    const m = this.#m;
    const { tensions } = this;
    let o = this.tensionRows * this.#perRow;
    for (let k = 0; k < this.#lines.length; k++) {
      const { base, pitch, elements } = this.#lines[k]!;
      const T = base + COLUMN.T * pitch;
      const IL = base + COLUMN.IL * pitch;
      for (let e = 0; e < elements; e++) {
        tensions[o + e] = m[T + e]!;
        if (m[IL + e] === 0) tensions[o + e] = Number.NaN;
      }
      o += elements;
    }
    this.tensionRows++;
    const room = (this.tensionRows + 1) * this.#perRow <= tensions.length;
    this.nextRow = room ? this.tensionRows / this.tensionRate : Number.POSITIVE_INFINITY;
  }

  /** Element tensions at the frames' times, for the eye. */
  frameTensions(): Float32Array {
    const out = new Float32Array(this.frames * this.#perRow);
    for (let f = 0; f < this.frames; f++) {
      const row = Math.min(this.tensionRows - 1, Math.round((f / this.frameRate) * this.tensionRate));
      out.set(this.tensions.subarray(row * this.#perRow, (row + 1) * this.#perRow), f * this.#perRow);
    }
    return out;
  }

  /** Largest tension of every element of a line: CFC 60 where the rate carries it, raw otherwise. */
  elementPeaks(index: number): ElementPeaks {
    const line = this.#lines[index]!;
    const first = this.#lines.slice(0, index).reduce((sum, { elements }) => sum + elements, 0);
    const peak = new Float32Array(line.elements);
    const finder = this.tensionRate >= CARRIES_CLASS ? new PeakFinder(this.tensionRate) : undefined;
    for (let e = 0; e < line.elements; e++) {
      const history = { data: this.tensions, first: first + e, stride: this.#perRow, count: this.tensionRows };
      peak[e] = finder ? finder.find(history).value : largestOf(history);
    }
    return { at: Float32Array.from(peak, (_, e) => 0.5 * (line.fractions[e]! + line.fractions[e + 1]!)), peak };
  }
}

/** Largest value and its index; 0 for an empty signal. */
export function largest(signal: Float32Array | Float64Array): { value: number; index: number } {
  let index = 0;
  for (let i = 1; i < signal.length; i++) if (signal[i]! > signal[index]!) index = i;
  return { value: signal[index] ?? 0, index };
}

function largestOf({ data, first, stride, count }: Samples): number {
  let most = 0;
  for (let k = 0; k < count; k++) if (data[first + k * stride]! > most) most = data[first + k * stride]!;
  return most;
}

const signalPeaks = new PeakFinder(SIGNAL_RATE);

/** Raw and filtered peak of a signal at the signal rate. */
export function peakOf(signal: Float32Array): Peak {
  const raw = largest(signal);
  const smooth = signalPeaks.find({ data: signal, first: 0, stride: 1, count: signal.length });
  return {
    raw: raw.value,
    rawTime: raw.index / SIGNAL_RATE,
    cfc60: smooth.value,
    cfc60Time: smooth.index / SIGNAL_RATE,
  };
}
