/**
 * The largest value of a signal after the CFC 60 filter, without filtering all of it. A filtered value cannot exceed the
 * filter's gain times the largest raw value around it, so only the blocks of a signal that may hold the peak are filtered.
 * What is left out beyond a block's margins has decayed below rounding.
 */
import { cfc60 } from "./cfc60.ts";

/** Samples of a signal: value k at `first + k·stride`. NaN stands for nothing, which is 0. */
export interface Samples {
  readonly data: Float32Array;
  readonly first: number;
  readonly stride: number;
  readonly count: number;
}

export interface FilteredPeak {
  /** Never below 0. */
  readonly value: number;
  /** Which sample. */
  readonly index: number;
}

/** Time after which the filter has forgotten what it was fed, to about 1e-12 [s]. */
const MEMORY = 0.05;

/** Finds filtered peaks of signals of one rate [1/s]. */
export class PeakFinder {
  readonly #rate: number;
  readonly #block: number;
  /** Most that the filter can make of a signal no larger than 1: Σ|impulse response| [-]. */
  readonly #gain: number;
  readonly #window: Float64Array;
  #blocks = new Float64Array(0);

  constructor(rate: number) {
    this.#rate = rate;
    this.#block = Math.ceil(MEMORY * rate);
    this.#window = new Float64Array(5 * this.#block);
    const impulse = new Float64Array(4 * this.#block + 1);
    impulse[2 * this.#block] = 1;
    this.#gain = cfc60(impulse, rate).reduce((sum, response) => sum + Math.abs(response), 0);
  }

  find(samples: Samples): FilteredPeak {
    const count = Math.ceil(samples.count / this.#block);
    const blocks = this.#largestOfBlocks(samples, count);
    let first = 0;
    for (let b = 1; b < count; b++) if (blocks[b]! > blocks[first]!) first = b;
    let peak = this.#peakInBlock(samples, first, { value: 0, index: 0 });
    for (let b = 0; b < count; b++) {
      const around = Math.max(b > 0 ? blocks[b - 1]! : 0, blocks[b]!, b + 1 < count ? blocks[b + 1]! : 0);
      if (b !== first && this.#gain * around > peak.value) peak = this.#peakInBlock(samples, b, peak);
    }
    return peak;
  }

  #largestOfBlocks({ data, first, stride, count }: Samples, blocks: number): Float64Array {
    if (this.#blocks.length < blocks) this.#blocks = new Float64Array(blocks);
    for (let b = 0; b < blocks; b++) {
      const end = first + Math.min((b + 1) * this.#block, count) * stride;
      let most = 0;
      for (let at = first + b * this.#block * stride; at < end; at += stride)
        if (Math.abs(data[at]!) > most) most = Math.abs(data[at]!);
      this.#blocks[b] = most;
    }
    return this.#blocks;
  }

  /** Filters a block with a block's margin on either side; the better of its peak and the one so far, the earlier if equal. */
  #peakInBlock({ data, first, stride, count }: Samples, block: number, best: FilteredPeak): FilteredPeak {
    const size = this.#block;
    const from = Math.max(0, (block - 1) * size);
    const to = Math.min(count, (block + 2) * size);
    const window = this.#window.subarray(0, to - from);
    for (let k = 0; k < window.length; k++) {
      const value = data[first + (from + k) * stride]!;
      window[k] = Number.isNaN(value) ? 0 : value;
    }
    const smooth = cfc60(window, this.#rate);
    let { value, index } = best;
    const end = Math.min(count, (block + 1) * size) - from;
    for (let k = block * size - from; k < end; k++) {
      if (smooth[k]! < value || (smooth[k] === value && from + k >= index)) continue;
      value = smooth[k]!;
      index = from + k;
    }
    return { value, index };
  }
}
