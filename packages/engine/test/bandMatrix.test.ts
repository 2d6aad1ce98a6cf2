import { describe, expect, it } from "vitest";
import { BandMatrix } from "../src/statics/bandMatrix.ts";

/** Numbers that look random and are the same every time. */
function* numbers(): Generator<number, never> {
  for (let state = 12345; ; ) {
    state = (state * 1103515245 + 12345) % 2147483648;
    yield state / 2147483648 - 0.5;
  }
}

describe("a band matrix", () => {
  it("solves what it was given, with rows of uneven reach", () => {
    const random = numbers();
    const next = () => random.next().value;
    const size = 60;
    const matrix = new BandMatrix(size, 9);
    const dense = Array.from({ length: size }, () => new Float64Array(size));
    for (let i = 0; i < size; i++) {
      const reach = i % 7 === 0 ? 9 : 2;
      for (let j = Math.max(0, i - reach); j <= i; j++) {
        const value = i === j ? 12 : next();
        matrix.add(i, j, value);
        dense[i]![j] = value;
        dense[j]![i] = value;
      }
    }
    const x = Float64Array.from({ length: size }, next);
    const shift = 0.25;
    const b = Float64Array.from(dense, (row, i) => row.reduce((sum, value, j) => sum + value * x[j]!, shift * x[i]!));
    const found = new Float64Array(size);
    expect(matrix.solve(b, shift, found)).toBe(true);
    for (let i = 0; i < size; i++) expect(found[i]).toBeCloseTo(x[i]!, 12);
  });

  it("says when it is not positive definite, and is as good as new when cleared", () => {
    const matrix = new BandMatrix(2, 1);
    matrix.add(0, 0, 1);
    matrix.add(1, 0, 2);
    matrix.add(1, 1, 1);
    const x = new Float64Array(2);
    expect(matrix.solve(Float64Array.of(1, 1), 0, x)).toBe(false);
    matrix.clear();
    matrix.add(0, 0, 4);
    matrix.add(1, 1, 16);
    expect(matrix.solve(Float64Array.of(4, 8), 0, x)).toBe(true);
    expect([...x]).toEqual([1, 0.5]);
  });
});
