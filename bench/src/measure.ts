/**
 * Times of work that is the same every time. The work is cut into slices; every slice's least time over several rounds counts,
 * and they are summed: what other programs on the machine take from a round hits other slices in the next.
 */
export class QuietTime {
  readonly #least: number[] = [];
  #slice = 0;

  begin(): void {
    this.#slice = 0;
  }
  /** Does the next slice of the round; returns what it returns. */
  slice<Result>(work: () => Result): Result {
    const before = performance.now();
    const result = work();
    const took = performance.now() - before;
    this.#least[this.#slice] = Math.min(this.#least[this.#slice] ?? Number.POSITIVE_INFINITY, took);
    this.#slice++;
    return result;
  }
  /** [ms] */
  get total(): number {
    return this.#least.reduce((sum, took) => sum + took, 0);
  }
}

/** FNV-1a over the bytes of arrays, as eight hexadecimal digits. */
export function checksum(arrays: readonly (Float32Array | Float64Array)[]): string {
  let hash = 0x811c9dc5;
  for (const array of arrays) {
    for (const byte of new Uint8Array(array.buffer, array.byteOffset, array.byteLength)) {
      hash = Math.imul(hash ^ byte, 0x01000193);
    }
  }
  return (hash >>> 0).toString(16).padStart(8, "0");
}
