/**
 * Largest tension of every element after the CFC 60 filter, found while a run goes on. Of the rows of tensions only the last
 * three blocks are kept, so it takes little memory at any length of line and run. A block is filtered when the one after it is
 * full, and only for elements in which it may hold a larger peak than the one so far. The result is that of filtering all rows
 * at once, to rounding.
 */
import { FilteredBlocks } from "./filteredPeak.ts";

/** Rows that are wanted, give or take a third, and the least that will do [1/s]. */
const RATE = 1750;
const LEAST_RATE = 1200;
/** Blocks that are kept: the one that is filtered and its margins. */
const KEPT = 3;

export class ElementPeakFinder {
  /** Tensions are to be read every so many steps. */
  readonly every: number;
  /** Rows per second [1/s]. */
  readonly rate: number;
  /** Tensions of all elements, line after line, as they change. */
  readonly #lines: readonly Float64Array[];
  readonly #elements: number;
  /**
   * Whether a row is the mean of two readings half a row apart: that takes out what swings once a row or nearly so, as single
   * elements do, which would else pass as slow. Where steps are too long for it, rows between two readings are filled in.
   */
  readonly #paired: boolean;
  readonly #fill: number;
  #half = false;
  /** The reading before. */
  readonly #before: Float64Array;
  readonly #blocks: FilteredBlocks;
  /** Per element: row r in place r mod (KEPT·size). */
  readonly #rows: Float32Array;
  /** Per kept block: the least and the largest of every element. */
  readonly #low: Float32Array;
  readonly #high: Float32Array;
  readonly #peaks: Float64Array;
  #count = 0;

  /** `lines`: views of the tensions in the memory that changes [N]; `step`: of the run [s]. */
  constructor(lines: readonly Float64Array[], step: number) {
    const elements = lines.reduce((sum, line) => sum + line.length, 0);
    this.#lines = lines;
    this.#elements = elements;
    this.every = Math.max(1, Math.round(1 / (2 * RATE * step)));
    this.#paired = 2 * this.every * step * LEAST_RATE <= 1;
    const interval = (this.#paired ? 2 : 1) * this.every * step;
    this.#fill = this.#paired ? 1 : Math.ceil(LEAST_RATE * interval);
    this.rate = this.#fill / interval;
    this.#blocks = new FilteredBlocks(this.rate);
    this.#before = new Float64Array(elements);
    this.#rows = new Float32Array(KEPT * this.#blocks.size * elements);
    this.#low = new Float32Array(KEPT * elements);
    this.#high = new Float32Array(KEPT * elements);
    this.#peaks = new Float64Array(elements);
  }

  /** Reads the tensions. */
  read(): void {
    if (this.#count === 0) this.#addRow(1);
    else if (this.#paired) {
      if (this.#half) this.#addRow(0.5);
      this.#half = !this.#half;
      if (!this.#half) return;
    } else for (let j = 1; j <= this.#fill; j++) this.#addRow(j / this.#fill);
    let o = 0;
    for (let k = 0; k < this.#lines.length; k++) {
      this.#before.set(this.#lines[k]!, o);
      o += this.#lines[k]!.length;
    }
  }

  /** Adds a row, so far on the way from the reading before to the present one; takes in the block that it fills. */
  #addRow(share: number): void {
    const { size } = this.#blocks;
    const [rows, before] = [this.#rows, this.#before];
    const places = KEPT * size;
    let o = this.#count % places;
    let i = 0;
    for (let k = 0; k < this.#lines.length; k++) {
      const tensions = this.#lines[k]!;
      for (let e = 0; e < tensions.length; e++, i++, o += places) {
        // A slack element carries nothing, whatever is noted of it.
        const from = Math.max(0, before[i]!);
        const to = Math.max(0, tensions[e]!);
        rows[o] = from + share * (to - from);
      }
    }
    this.#count++;
    if (this.#count % size > 0) return;
    const block = this.#count / size - 1;
    this.#measure(block);
    if (block > 0) this.#judge(block - 1);
  }

  /** Finds the least and the largest of every element in a block. */
  #measure(block: number): void {
    const { size } = this.#blocks;
    const rows = this.#rows;
    const from = (block % KEPT) * size;
    const count = Math.min(size, this.#count - block * size);
    const b = (block % KEPT) * this.#elements;
    for (let e = 0; e < this.#elements; e++) {
      const o = e * KEPT * size + from;
      let low = rows[o]!;
      let high = low;
      for (let r = o + 1; r < o + count; r++) {
        const tension = rows[r]!;
        if (tension < low) low = tension;
        if (tension > high) high = tension;
      }
      this.#low[b + e] = low;
      this.#high[b + e] = high;
    }
  }

  /** Takes the peaks in a block into account; it and the blocks beside it are measured. */
  #judge(block: number): void {
    const blocks = this.#blocks;
    const elements = this.#elements;
    const last = Math.ceil(this.#count / blocks.size) - 1;
    const [low, high] = [this.#low, this.#high];
    const a = (Math.max(0, block - 1) % KEPT) * elements;
    const b = (block % KEPT) * elements;
    const c = (Math.min(last, block + 1) % KEPT) * elements;
    for (let e = 0; e < elements; e++) {
      const least = Math.min(low[a + e]!, low[b + e]!, low[c + e]!);
      const most = Math.max(high[a + e]!, high[b + e]!, high[c + e]!);
      if (blocks.most(least, most) > this.#peaks[e]!) this.#filter(block, e);
    }
  }

  #filter(block: number, e: number): void {
    const { size, window } = this.#blocks;
    const rows = this.#rows;
    const from = Math.max(0, (block - 1) * size);
    const to = Math.min(this.#count, (block + 2) * size);
    for (let r = from; r < to; r += size) {
      const o = e * KEPT * size + (r % (KEPT * size));
      window.set(rows.subarray(o, o + Math.min(size, to - r)), r - from);
    }
    const end = Math.min(this.#count, (block + 1) * size);
    const peak = window[this.#blocks.largest(to - from, block * size - from, end - from)]!;
    if (peak > this.#peaks[e]!) this.#peaks[e] = peak;
  }

  /** Peaks of all elements so far, line after line [N]. */
  peaks(): Float32Array {
    const { size } = this.#blocks;
    const blocks = Math.ceil(this.#count / size);
    const full = Math.floor(this.#count / size);
    if (blocks > full) this.#measure(full);
    // All but those that have had the block after them.
    for (let block = Math.max(0, full - 1); block < blocks; block++) this.#judge(block);
    return Float32Array.from(this.#peaks);
  }
}
