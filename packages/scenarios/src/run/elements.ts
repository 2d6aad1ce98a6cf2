/** Elements of a line, given by their middles. */

/** Half an element's natural length, from the middles of its neighbours; where those are of other lengths, the longer counts [-]. */
export function halfElement(at: Float32Array, e: number): number {
  const before = e > 0 ? at[e]! - at[e - 1]! : 2 * at[e]!;
  const after = e + 1 < at.length ? at[e + 1]! - at[e]! : 2 * (1 - at[e]!);
  return Math.max(before, after) / 2;
}
