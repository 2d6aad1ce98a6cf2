/**
 * Symmetric positive definite matrix whose entries lie near the diagonal: lower half by rows of equal room, each row filled
 * from its own first column on. In-place Cholesky within that profile (Golub & Van Loan, ch. 4.3; George & Liu, ch. 4).
 */
export class BandMatrix {
  readonly size: number;
  readonly band: number;
  readonly #values: Float64Array;
  readonly #factor: Float64Array;
  /** First column of every row that holds anything. */
  readonly #from: Int32Array;

  /** @param band most columns that any entry lies before the diagonal */
  constructor(size: number, band: number) {
    this.size = size;
    this.band = band;
    this.#values = new Float64Array(size * (band + 1));
    this.#factor = new Float64Array(size * (band + 1));
    this.#from = new Int32Array(size);
    this.clear();
  }

  clear(): void {
    this.#values.fill(0);
    for (let i = 0; i < this.size; i++) this.#from[i] = i;
  }

  /** Adds to entry (row, column) of the lower half; entries of the upper half are the caller's to leave out. */
  add(row: number, column: number, value: number): void {
    const at = row * this.band + column + this.band;
    this.#values[at] = this.#values[at]! + value;
    if (column < this.#from[row]!) this.#from[row] = column;
  }

  /** Solves (this + shift·I)·x = b into `x`; false when the shifted matrix is not positive definite. */
  solve(b: Float64Array, shift: number, x: Float64Array): boolean {
    if (!this.#factorise(shift)) return false;
    const { size, band } = this;
    const l = this.#factor;
    const from = this.#from;
    for (let i = 0; i < size; i++) {
      const row = i * band + band;
      let sum = b[i]!;
      for (let k = from[i]!; k < i; k++) sum -= l[row + k]! * x[k]!;
      x[i] = sum / l[row + i]!;
    }
    for (let i = size - 1; i >= 0; i--) {
      const row = i * band + band;
      const now = x[i]! / l[row + i]!;
      x[i] = now;
      for (let k = from[i]!; k < i; k++) x[k] = x[k]! - l[row + k]! * now;
    }
    return true;
  }

  #factorise(shift: number): boolean {
    const { size, band } = this;
    const l = this.#factor;
    const from = this.#from;
    l.set(this.#values);
    for (let i = 0; i < size; i++) {
      const row = i * band + band;
      const start = from[i]!;
      let diagonal = l[row + i]! + shift;
      for (let j = start; j < i; j++) {
        const other = j * band + band;
        let sum = l[row + j]!;
        for (let k = Math.max(start, from[j]!); k < j; k++) sum -= l[row + k]! * l[other + k]!;
        const value = sum / l[other + j]!;
        l[row + j] = value;
        diagonal -= value * value;
      }
      if (!(diagonal > 0)) return false;
      l[row + i] = Math.sqrt(diagonal);
    }
    return true;
  }
}
