/**
 * Largest tension of every element after the CFC 60 filter, found while a run goes on. The kernel takes every row of tensions
 * through the filter's first pass; of what comes out only the last two blocks are kept, so it takes little memory at any
 * length of line and run. The second pass, back in time, goes over a block when the one after it is full, and only for
 * elements in which it may find a larger peak than the one so far. The result is that of filtering all rows at once, to rounding.
 */

import type { LineKernel } from "../kernel/lineKernel.ts";
import { ROWS, ROWS_COLUMN } from "../kernel/lineLayout.ts";
import { Cfc60 } from "./cfc60.ts";
import { blockSize } from "./filteredPeak.ts";

/** Rows that are wanted, give or take a third, and the least that will do [1/s]. */
const ROW_RATE = 1400;
const LEAST_ROW_RATE = 1200;
/** The one that is judged and what comes after it [-]. */
const KEPT_BLOCKS = 2;

/** How tensions are read at a step [s]. */
export interface RowPlan {
  /** Tensions are to be read every so many steps. */
  readonly every: number;
  /**
   * Whether a row is the mean of two readings half a row apart: that takes out what swings once a row or nearly so, as single
   * elements do, which would else pass as slow. Where steps are too long for it, rows between two readings are filled in.
   */
  readonly paired: boolean;
  /** Rows from one reading to the next; of pairs, from one pair to the next. */
  readonly fill: number;
  /** Rows per second [1/s]. */
  readonly rate: number;
  /** Time between the two readings of a row; 0 if the row is one reading [s]. */
  readonly spacing: number;
}

export function rowPlan(step: number): RowPlan {
  const every = Math.max(1, Math.round(1 / (2 * ROW_RATE * step)));
  const paired = 2 * every * step * LEAST_ROW_RATE <= 1;
  const interval = (paired ? 2 : 1) * every * step;
  const fill = paired ? 1 : Math.ceil(LEAST_ROW_RATE * interval);
  return { every, paired, fill, rate: fill / interval, spacing: paired ? every * step : 0 };
}

/** Numbers to a row of so many elements: even, for two lanes. */
const rowLength = (elements: number): number => elements + (elements & 1);

/** Numbers of kernel memory that the rows of a line of so many elements take at a step [s]. */
export const rowsMemory = (elements: number, step: number): number =>
  ROWS.columns + (ROWS_COLUMN.rows + KEPT_BLOCKS * blockSize(rowPlan(step).rate)) * rowLength(elements);

/** Where a line's tensions lie in the kernel's memory, how many they are, and from where on there is room for their rows. */
export interface Tensions {
  readonly at: number;
  readonly elements: number;
  readonly rowsAt: number;
}

export class ElementPeakFinder {
  readonly plan: RowPlan;
  readonly #kernel: LineKernel;
  readonly #lines: readonly LinePeaks[];
  /** Rows in a block. */
  readonly #size: number;
  #half = false;
  #count = 0;

  /** `step` of the run [s]. Of an odd number of tensions the one that lies behind the last goes through the filter as well. */
  constructor(kernel: LineKernel, lines: readonly Tensions[], step: number) {
    this.plan = rowPlan(step);
    this.#kernel = kernel;
    const filter = new Cfc60(this.plan.rate, this.plan.spacing);
    this.#size = blockSize(this.plan.rate);
    this.#lines = lines.map((line) => new LinePeaks(kernel.memory, line, filter, this.#size));
    for (let k = 1; k < lines.length; k++) kernel.memory[lines[k - 1]!.rowsAt + ROWS.next] = lines[k]!.rowsAt;
  }

  /** Reads the tensions. */
  read(): void {
    const { paired, fill } = this.plan;
    if (this.#count === 0) {
      for (let k = 0; k < this.#lines.length; k++) this.#lines[k]!.begin();
      this.#addRow(1);
    } else if (paired) {
      if (this.#half) this.#addRow(0.5);
      this.#half = !this.#half;
      if (!this.#half) return;
    } else for (let j = 1; j <= fill; j++) this.#addRow(j / fill);
    for (let k = 0; k < this.#lines.length; k++) this.#lines[k]!.keep();
  }

  /** Adds a row, so far on the way from the reading before to the present one; judges the block that has had its next. */
  #addRow(share: number): void {
    const place = this.#count % (KEPT_BLOCKS * this.#size);
    for (let k = 0; k < this.#lines.length; k++) {
      const line = this.#lines[k]!;
      if (place % this.#size === 0) line.beginBlock(place / this.#size);
      this.#kernel.memory[line.head + ROWS.share] = share;
    }
    this.#kernel.row(this.#lines[0]!.head, place);
    this.#count++;
    if (this.#count % this.#size === 0 && this.#count > this.#size) this.#judge(this.#count / this.#size - KEPT_BLOCKS);
  }

  /** Takes the peaks in a block into account, which with those after it is all that is kept or was never more. */
  #judge(block: number): void {
    const from = block * this.#size;
    const count = Math.min(this.#count, (block + KEPT_BLOCKS) * this.#size) - from;
    for (let k = 0; k < this.#lines.length; k++) this.#lines[k]!.judge(block, count);
  }

  /** Peaks of all elements so far, line after line [N]. */
  peaks(): Float32Array {
    const blocks = Math.ceil(this.#count / this.#size);
    const full = Math.floor(this.#count / this.#size);
    const tails = this.#lines.map(({ tail }) => tail.slice());
    // Only blocks that have not yet had the block after them.
    for (let block = Math.max(0, full - 1); block < blocks; block++) this.#judge(block);
    for (const [k, tail] of tails.entries()) this.#lines[k]!.tail.set(tail);
    return Float32Array.from(this.#lines.flatMap(({ peaks }) => [...peaks]));
  }
}

/** The rows and peaks of one line. */
class LinePeaks {
  readonly head: number;
  readonly peaks: Float64Array;
  /** Last row of the block that was judged last. */
  readonly tail: Float64Array;
  readonly #m: Float64Array;
  /** Numbers to a row. */
  readonly #length: number;
  readonly #size: number;
  readonly #filter: Cfc60;
  readonly #window: Float64Array;
  readonly #tensions: Float64Array;
  readonly #before: Float64Array;

  constructor(m: Float64Array, { at, elements, rowsAt }: Tensions, filter: Cfc60, size: number) {
    this.#m = m;
    this.head = rowsAt;
    this.#length = rowLength(elements);
    this.#size = size;
    this.#filter = filter;
    this.peaks = new Float64Array(elements);
    this.tail = new Float64Array(this.#length);
    this.#window = new Float64Array(KEPT_BLOCKS * size + 1);
    this.#tensions = m.subarray(at, at + this.#length);
    this.#before = this.#column(ROWS_COLUMN.before);
    const { a0, a1, b1, b2 } = filter.coefficients;
    m[rowsAt + ROWS.tensions] = at;
    m[rowsAt + ROWS.count] = this.#length;
    m[rowsAt + ROWS.places] = KEPT_BLOCKS * size;
    m.set([a0, a1, b1, b2], rowsAt + ROWS.a0);
  }

  #column(which: number): Float64Array {
    const at = this.head + ROWS.columns + which * this.#length;
    return this.#m.subarray(at, at + this.#length);
  }

  /** The filter's past: the first reading for ever. */
  begin(): void {
    const { rows, x } = ROWS_COLUMN;
    const last = KEPT_BLOCKS * this.#size - 1;
    const past = [x, x + 1, rows + last, rows + last - 1].map((which) => this.#column(which));
    for (const row of past) for (let e = 0; e < row.length; e++) row[e] = Math.max(0, this.#tensions[e]!);
  }

  beginBlock(which: number): void {
    this.#column(ROWS_COLUMN.low + which).fill(Number.POSITIVE_INFINITY);
    this.#column(ROWS_COLUMN.high + which).fill(Number.NEGATIVE_INFINITY);
  }

  /** Keeps the present reading as the one before. */
  keep(): void {
    this.#before.set(this.#tensions);
  }

  /** Takes the peaks of a block into account, of so many rows from its first one on; blocks come one after the other. */
  judge(block: number, count: number): void {
    const m = this.#m;
    const length = this.#length;
    const which = block % KEPT_BLOCKS;
    const low = this.head + ROWS.columns + (ROWS_COLUMN.low + which) * length;
    const high = this.head + ROWS.columns + (ROWS_COLUMN.high + which) * length;
    // The other block follows, if it has rows.
    const next = count > this.#size ? (1 - 2 * which) * length : 0;
    const { gain } = this.#filter;
    for (let e = 0; e < this.peaks.length; e++) {
      const least = Math.min(m[low + e]!, m[low + next + e]!);
      const most = Math.max(m[high + e]!, m[high + next + e]!);
      // No more than this comes of what lies between them; the quarter is for what a peak between two rows may lie above them.
      if (0.5 * (most + least + 1.25 * gain * (most - least)) > this.peaks[e]!) this.#filterBack(block, count, e);
    }
    this.tail.set(this.#column(ROWS_COLUMN.rows + which * this.#size + this.#size - 1));
  }

  /** Runs the second pass over a block of an element, what comes after it, and the row before it; keeps the largest. */
  #filterBack(block: number, count: number, e: number): void {
    const m = this.#m;
    const window = this.#window;
    const length = this.#length;
    const which = block % KEPT_BLOCKS;
    const rows = this.head + ROWS.columns + ROWS_COLUMN.rows * length + e;
    let at = rows + which * this.#size * length;
    window[0] = block > 0 ? this.tail[e]! : m[at]!;
    for (let r = 0; r < count; r++, at += length) {
      if (r === this.#size) at = rows + (1 - which) * this.#size * length;
      window[r + 1] = m[at]!;
    }
    this.#filter.smoothBack(window, count + 1);
    let peak = this.peaks[e]!;
    const end = Math.min(count, this.#size);
    for (let r = 1; r <= end; r++) {
      if (window[r]! > peak) peak = window[r]!;
      // The run's first row and its last have no peak between them and a neighbour.
      if ((r > 1 || block > 0) && r < count) peak = Math.max(peak, topAt(window, r));
    }
    this.peaks[e] = peak;
  }
}

/** Top of the parabola through a sample and its neighbours, if no neighbour is larger; else 0. */
export function topAt(samples: Float64Array, k: number): number {
  const here = samples[k]!;
  const before = samples[k - 1]!;
  const after = samples[k + 1]!;
  if (here < before || here < after) return 0;
  const bend = before - 2 * here + after;
  const tilt = after - before;
  return bend < 0 ? here - (0.125 * tilt * tilt) / bend : here;
}
