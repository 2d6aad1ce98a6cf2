/**
 * Keeps what a run shows, in arrays made once: force signals at 10 kHz (straight between steps), positions and tensions for the
 * eye at about 250 Hz, less on long or fine lines, so that a recording stays within its memory; and finds every element's peak.
 */

import { type Clock, timeOf } from "../clock.ts";
import { SIGNAL_RATE } from "../constants.ts";
import type { LineKernel } from "../kernel/lineKernel.ts";
import { COLUMN } from "../kernel/lineLayout.ts";
import type { Line } from "../line/line.ts";
import { ElementPeakFinder, rowsMemory } from "./elementPeaks.ts";
import { PeakFinder } from "./filteredPeak.ts";
import type { ElementPeaks, Peak } from "./recording.ts";
import { ShownLine } from "./shownLine.ts";

/** Most numbers (4 bytes each) for positions; tensions take a third as many. */
const MOST_POSITION_NUMBERS = 4_500_000;
/** Rate of frames [1/s]. */
const FRAME_RATE = 250;
/** Time that there is room for at first [s]: most runs end long before the longest that they may take. */
const FIRST_ROOM_TIME = 8;

/** Numbers of kernel memory that a recorder of these lines needs at a step [s]. */
export const recorderMemory = (lines: readonly Line[], step: number): number =>
  lines.reduce((sum, { elements }) => sum + rowsMemory(elements, step), 0);

/** What a recorder is made of besides the lines and the kernel that steps them. */
export interface RecorderMake {
  /** Start of the free part of the kernel's memory; `recorderMemory` says how much the recorder needs. */
  readonly free: number;
  /** [s] */
  readonly duration: number;
  readonly clock: Clock;
  /** Number of signals. */
  readonly channels: number;
  /** Whether frames hold the lines' shapes and tensions, for the eye, or ring and walker alone. */
  readonly shapes: boolean;
}

/** The same numbers, with room for `count` numbers. */
function withRoom(numbers: Float32Array, count: number): Float32Array {
  if (count <= numbers.length) return numbers;
  const larger = new Float32Array(Math.max(count, 2 * numbers.length));
  larger.set(numbers);
  return larger;
}

export class Recorder {
  /** The recorded samples of every signal, and room for more. */
  channels: readonly Float32Array[];
  readonly frameRate: number;
  readonly #mostFrames: number;
  readonly #mostSamples: number;
  #positions: Float32Array;
  #tensions: Float32Array;
  #ringAt: Float32Array;
  /** Lines of which frames hold the shape. */
  readonly #shown: readonly ShownLine[];
  samples = 0;
  frames = 0;
  /** Time of the next frame; infinite when there is no room for more [s]. */
  nextFrame = 0;
  /** The next step whose tensions count for the elements' peaks. */
  nextRow = 0;
  /** Time from the sample before to the next one, and of the next one [s]. */
  #interval: number;
  #clock: Clock;
  #steps = 0;
  #nextSample = 0;
  readonly #last: Float64Array;
  readonly #perFrame: number;
  readonly #perRow: number;
  /** Of every mesh that the run has been on, the present one last. */
  readonly #meshes: { readonly lines: readonly Line[]; readonly peaks: ElementPeakFinder }[] = [];

  constructor(lines: readonly Line[], kernel: LineKernel, make: RecorderMake) {
    const { free, duration, clock, channels, shapes } = make;
    this.#clock = clock;
    this.#interval = clock.step;
    this.#shown = shapes ? lines.map((line) => new ShownLine(line, kernel.memory)) : [];
    const nodes = this.#shown.reduce((sum, { first }) => sum + first.nodes, 0);
    this.#perFrame = 3 * (nodes + 2);
    this.#perRow = this.#shown.reduce((sum, { first }) => sum + first.elements, 0);
    this.frameRate = Math.min(FRAME_RATE, Math.max(25, MOST_POSITION_NUMBERS / (this.#perFrame * duration)));
    const count = (time: number, rate: number) => Math.floor(time * rate + 1e-6) + 1;
    this.#mostFrames = count(duration, this.frameRate);
    this.#mostSamples = count(duration, SIGNAL_RATE);
    const first = Math.min(duration, FIRST_ROOM_TIME);
    const [frames, samples] = [count(first, this.frameRate), count(first, SIGNAL_RATE)];
    this.channels = Array.from({ length: channels }, () => new Float32Array(samples));
    this.#positions = new Float32Array(frames * this.#perFrame);
    this.#ringAt = new Float32Array(frames * 2);
    this.#tensions = new Float32Array(frames * this.#perRow);
    this.#last = new Float64Array(channels);
    this.#watch(lines, kernel, free);
  }

  /** Watches the elements of a mesh, whose rows are to be kept in the kernel's memory from `free` on. */
  #watch(lines: readonly Line[], kernel: LineKernel, free: number): void {
    const { step } = this.#clock;
    let rowsAt = free;
    const tensions = lines.map(({ base, pitch, elements }) => {
      const at = rowsAt;
      rowsAt += rowsMemory(elements, step);
      return { at: base + COLUMN.T * pitch, elements, rowsAt: at };
    });
    this.#meshes.push({ lines, peaks: new ElementPeakFinder(kernel, tensions, step) });
  }

  /** Goes on with the same lines on another mesh, on the clock of its steps. What it shows is told on the first mesh. */
  goOn(lines: readonly Line[], kernel: LineKernel, { free, clock }: Pick<RecorderMake, "free" | "clock">): void {
    for (const [k, shown] of this.#shown.entries()) shown.goOn(lines[k]!, kernel.memory);
    this.#interval = clock.firstTime - timeOf(this.#clock, clock.firstStep - 1);
    this.#clock = clock;
    this.nextRow = clock.firstStep;
    this.#watch(lines, kernel, free);
  }

  /** Positions at the frames: of the nodes of the lines shown, of ring and walker [m]. */
  get positions(): Float32Array {
    return this.#positions.subarray(0, this.frames * this.#perFrame);
  }
  /** Element tensions at the frames; NaN where an element has parted [N]. */
  get tensions(): Float32Array {
    return this.#tensions.subarray(0, this.frames * this.#perRow);
  }
  /** Where the ring is on either line at the frames; −1: off it [-]. */
  get ringAt(): Float32Array {
    return this.#ringAt.subarray(0, this.frames * 2);
  }

  /** Takes in the channel values of the next step, and fills the samples since the last. */
  sample(values: Float64Array): void {
    const last = this.#last;
    const t = timeOf(this.#clock, this.#steps);
    for (; this.#nextSample <= t && this.samples < this.#mostSamples; this.samples++) {
      if (this.samples === this.channels[0]!.length) {
        this.channels = this.channels.map((channel) => withRoom(channel, this.samples + 1));
      }
      const { channels } = this;
      const share = t > 0 ? 1 - (t - this.#nextSample) / this.#interval : 1;
      for (let c = 0; c < last.length; c++) channels[c]![this.samples] = last[c]! + share * (values[c]! - last[c]!);
      this.#nextSample = (this.samples + 1) / SIGNAL_RATE;
    }
    for (let c = 0; c < last.length; c++) last[c] = values[c]!;
    this.#steps++;
    this.#interval = this.#clock.step;
  }

  /** Positions before the step that begins at `nextFrame` or first after it, and the tensions that led there. */
  frame(ring: Float64Array, walker: Float64Array, ringOnMain: number, ringOnBackup: number): void {
    this.#positions = withRoom(this.#positions, (this.frames + 1) * this.#perFrame);
    this.#tensions = withRoom(this.#tensions, (this.frames + 1) * this.#perRow);
    this.#ringAt = withRoom(this.#ringAt, (this.frames + 1) * 2);
    const out = this.#positions;
    let o = this.frames * this.#perFrame;
    for (let k = 0; k < this.#shown.length; k++) o = this.#shown[k]!.positions(out, o);
    for (let c = 0; c < 3; c++) out[o++] = ring[c]!;
    for (let c = 0; c < 3; c++) out[o++] = walker[c]!;
    this.#ringAt[2 * this.frames] = ringOnMain;
    this.#ringAt[2 * this.frames + 1] = ringOnBackup;
    let at = this.frames * this.#perRow;
    for (let k = 0; k < this.#shown.length; k++) at = this.#shown[k]!.tensions(this.#tensions, at);
    this.frames++;
    this.nextFrame = this.frames < this.#mostFrames ? this.frames / this.frameRate : Number.POSITIVE_INFINITY;
  }

  /** Takes the tensions of the step `nextRow` into the elements' peaks. */
  row(): void {
    const { peaks } = this.#meshes.at(-1)!;
    peaks.read();
    this.nextRow += peaks.plan.every;
  }

  /** Filtered peak of every element of the first mesh, per line; on a later mesh an element has got what was got where its middle lies. */
  elementPeaks(): readonly ElementPeaks[] {
    const [first, ...later] = this.#meshes.map(({ lines, peaks }) => peaksOf(lines, peaks));
    return first!.map(({ at, peak, rate }, k) => {
      for (const mesh of later) {
        const { fractions } = mesh[k]!;
        let e = 0;
        for (let i = 0; i < at.length; i++) {
          while (e < fractions.length - 2 && fractions[e + 1]! < at[i]!) e++;
          peak[i] = Math.max(peak[i]!, mesh[k]!.peak[e]!);
        }
      }
      return { at, peak, rate };
    });
  }
}

/** Filtered peak of every element of a mesh, per line, and where its elements end. */
function peaksOf(lines: readonly Line[], finder: ElementPeakFinder) {
  const peaks = finder.peaks();
  const { rate } = finder.plan;
  let first = 0;
  return lines.map(({ elements, fractions }) => {
    const peak = peaks.slice(first, first + elements);
    first += elements;
    return { at: Float32Array.from(peak, (_, e) => 0.5 * (fractions[e]! + fractions[e + 1]!)), peak, rate, fractions };
  });
}

/** Largest value and its index; 0 for an empty signal. */
export function largest(signal: Float32Array | Float64Array): { value: number; index: number } {
  let index = 0;
  for (let i = 1; i < signal.length; i++) if (signal[i]! > signal[index]!) index = i;
  return { value: signal[index] ?? 0, index };
}

const signalPeaks = new PeakFinder(SIGNAL_RATE);

/** Raw and filtered peak of a signal at the signal rate. */
export function peakOf(signal: Float32Array): Peak {
  const raw = largest(signal);
  const smooth = signalPeaks.find(signal);
  return {
    raw: raw.value,
    rawTime: raw.index / SIGNAL_RATE,
    cfc60: smooth.value,
    cfc60Time: smooth.index / SIGNAL_RATE,
  };
}
