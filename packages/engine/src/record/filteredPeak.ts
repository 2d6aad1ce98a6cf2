/**
 * The largest value of a signal after the CFC 60 filter, without filtering the whole signal. What the filter makes of samples lies
 * within a little more than their range, so only the blocks of a signal that may hold the peak are filtered. What is left
 * out beyond a block's margins has decayed below rounding.
 */
import { Cfc60 } from "./cfc60.ts";

export interface FilteredPeak {
  /** Never below 0. */
  readonly value: number;
  /** Index of the sample. */
  readonly index: number;
}

type Signal = Float32Array | Float64Array;

/** Time after which the filter has forgotten what it was fed, to about 1e-12 [s]. */
const FILTER_MEMORY = 0.05;

/** Samples in a block of a signal at a rate [1/s]: what a block is filtered to needs no samples beyond the one beside it. */
export const blockSize = (rate: number): number => Math.ceil(FILTER_MEMORY * rate);

/** Blocks of samples at one rate [1/s], filtered with a block's margin on either side. */
class FilteredBlocks {
  /** Samples in a block. */
  readonly size: number;
  /** Room for a block and its margins. */
  readonly window: Float64Array;
  readonly #filter: Cfc60;
  readonly #gain: number;

  constructor(rate: number) {
    this.size = blockSize(rate);
    this.window = new Float64Array(3 * this.size);
    this.#filter = new Cfc60(rate);
    this.#gain = this.#filter.gain * this.#filter.gain;
  }

  /** More than the filter can make of samples that lie between `low` and `high`. */
  most(low: number, high: number): number {
    return 0.5 * (high + low + this.#gain * (high - low));
  }

  /**
   * Filters the first `count` samples of the window in place; returns the place of the largest from `from` up to `to`, the
   * first of equals.
   */
  largest(count: number, from: number, to: number): number {
    const { window } = this;
    this.#filter.smooth(window, count);
    let best = from;
    for (let k = from + 1; k < to; k++) if (window[k]! > window[best]!) best = k;
    return best;
  }
}

/** Finds filtered peaks of whole signals of one rate [1/s]. */
export class PeakFinder {
  readonly #blocks: FilteredBlocks;

  constructor(rate: number) {
    this.#blocks = new FilteredBlocks(rate);
  }

  find(signal: Signal): FilteredPeak {
    const most = this.#mostOfBlocks(signal);
    let first = 0;
    for (let b = 1; b < most.length; b++) if (most[b]! > most[first]!) first = b;
    let peak: FilteredPeak = { value: 0, index: 0 };
    if (most.length > 0) peak = this.#peakInBlock(signal, first, peak);
    for (let b = 0; b < most.length; b++) {
      if (b !== first && most[b]! > peak.value) peak = this.#peakInBlock(signal, b, peak);
    }
    return peak;
  }

  /** Per block: more than the filter can make of any sample in it, which depends on the blocks beside it. */
  #mostOfBlocks(signal: Signal): Float64Array {
    const { size } = this.#blocks;
    const count = Math.ceil(signal.length / size);
    const low = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
    const high = new Float64Array(count).fill(Number.NEGATIVE_INFINITY);
    for (let b = 0; b < count; b++) {
      let least = signal[b * size]!;
      let most = least;
      const end = Math.min((b + 1) * size, signal.length);
      for (let k = b * size + 1; k < end; k++) {
        const sample = signal[k]!;
        if (sample < least) least = sample;
        else if (sample > most) most = sample;
      }
      low[b] = least;
      high[b] = most;
    }
    return low.map((least, b) => {
      const [before, after] = [Math.max(0, b - 1), Math.min(count - 1, b + 1)];
      return this.#blocks.most(
        Math.min(low[before]!, least, low[after]!),
        Math.max(high[before]!, high[b]!, high[after]!),
      );
    });
  }

  /** The better of a block's peak and the one so far, the earlier if equal. */
  #peakInBlock(signal: Signal, block: number, best: FilteredPeak): FilteredPeak {
    const { size, window } = this.#blocks;
    const from = Math.max(0, (block - 1) * size);
    const to = Math.min(signal.length, (block + 2) * size);
    window.set(signal.subarray(from, to));
    const end = Math.min(signal.length, (block + 1) * size);
    const at = this.#blocks.largest(to - from, block * size - from, end - from);
    const value = window[at]!;
    const better = value > best.value || (value === best.value && from + at < best.index);
    return better ? { value, index: from + at } : best;
  }
}

/** Largest value of a signal sampled at `rate` [1/s] after the CFC 60 filter, never below 0; as `cfc60` would give it, to rounding. */
export const cfc60Peak = (signal: Signal, rate: number): number => new PeakFinder(rate).find(signal).value;
