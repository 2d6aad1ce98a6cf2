import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  clopperPearson,
  en1990Factor,
  lowerBoundRank,
  natrellaFactor,
  shareUpperBound,
  testsForLeast,
  testsForRange,
  testsWithoutFailure,
  toleranceFactor,
  toleranceFactorKnownSpread,
} from "@secondline/strength";
import { describe, expect, it } from "vitest";

/** Computed, not published: exact factors two independent ways (quantile of the non-central t; direct quadrature), eight digits. */
const TABLE = fileURLToPath(new URL("./data/toleranceFactors.csv", import.meta.url));
const [header, ...rows] = readFileSync(TABLE, "utf8")
  .trim()
  .split(/\r?\n/)
  .map((line) => line.split(","));
const factors = rows
  .filter((row) => row[0] !== "inf")
  .map((row) => Object.fromEntries(header!.map((name, i) => [name, Number(row[i])])));

/** Agreement to 1e-6 of the value: the table has eight digits. */
function expectFactor(got: number, table: number): void {
  expect(Math.abs(got / table - 1)).toBeLessThan(1e-6);
}

describe("tolerance factors for the 5 % value", () => {
  it("covers n = 2 to 100", () => {
    expect(factors.map((row) => row.n)).toEqual([
      ...Array.from({ length: 29 }, (_, i) => i + 2),
      35,
      40,
      45,
      50,
      60,
      70,
      80,
      90,
      100,
    ]);
  });

  it.each([
    [0.5, "k_tol_P95_C50"],
    [0.75, "k_tol_P95_C75"],
    [0.9, "k_tol_P95_C90"],
    [0.95, "k_tol_P95_C95"],
    [0.99, "k_tol_P95_C99"],
  ])("exact factors at confidence %s agree with the table over all n", (confidence, column) => {
    for (const row of factors) expectFactor(toleranceFactor(row.n!, 0.95, confidence), row[column]!);
  });

  it.each([
    [0.75, "k_sigma_known_P95_C75"],
    [0.9, "k_sigma_known_P95_C90"],
    [0.95, "k_sigma_known_P95_C95"],
  ])("factors for a known spread at confidence %s agree with the table over all n", (confidence, column) => {
    for (const row of factors) expectFactor(toleranceFactorKnownSpread(row.n!, 0.95, confidence), row[column]!);
  });

  it("the approximation fails where the table says so and agrees elsewhere", () => {
    for (const row of factors) {
      for (const [confidence, column] of [
        [0.9, "k_nist_approx_P95_C90"],
        [0.95, "k_nist_approx_P95_C95"],
      ] as const) {
        const got = natrellaFactor(row.n!, 0.95, confidence);
        if (Number.isNaN(row[column])) expect(got).toBeUndefined();
        else expectFactor(got!, row[column]!);
      }
    }
  });

  it("NIST/SEMATECH e-Handbook 7.2.6.3: n = 43, content 0.90, confidence 0.99 (from memory, recomputed)", () => {
    expect(toleranceFactor(43, 0.9, 0.99)).toBeCloseTo(1.8739536, 6);
    expect(natrellaFactor(43, 0.9, 0.99)).toBeCloseTo(1.8751896, 6);
  });

  it("one-sided 90/95 factors as CMH-17 defines them: exact values, computed; its print (from memory) is up to 0.002 off", () => {
    const exact = [
      [2, 20.5815],
      [3, 6.1553],
      [5, 3.4066],
      [10, 2.3546],
      [18, 1.9738],
      [30, 1.7773],
    ] as const;
    for (const [n, k] of exact) expect(Math.abs(toleranceFactor(n, 0.9, 0.95) - k)).toBeLessThan(0.0001);
  });

  it("needs two tests, and whole ones", () => {
    expect(() => toleranceFactor(1, 0.95, 0.75)).toThrow(/from 2, got 1/);
    expect(() => toleranceFactor(2.5, 0.95, 0.75)).toThrow(/whole number/);
  });
});

describe("EN 1990:2002 Annex D, clause D7.2, table D1", () => {
  it("agrees with the formula (computed) to 1e-6 over all n", () => {
    for (const row of factors) {
      expectFactor(en1990Factor(row.n!, true), row.kn_VX_known!);
      expectFactor(en1990Factor(row.n!, false), row.kn_VX_unknown!);
    }
  });

  it("agrees with the printed table (second hand, as an open R function has it), which is truncated and once off by more than 0.01", () => {
    const n = [1, 2, 3, 4, 5, 6, 8, 10, 20, 30];
    const known = [2.31, 2.01, 1.89, 1.83, 1.8, 1.77, 1.74, 1.72, 1.68, 1.67];
    const unknown = [undefined, undefined, 3.37, 2.63, 2.33, 2.18, 2.0, 1.92, 1.76, 1.73];
    n.forEach((count, i) => {
      expect(Math.abs(en1990Factor(count, true) - known[i]!)).toBeLessThanOrEqual(0.017);
      if (unknown[i] !== undefined)
        expect(Math.abs(en1990Factor(count, false) - unknown[i])).toBeLessThanOrEqual(0.017);
    });
  });
});

describe("order statistics (Wilks; documentation of the Python package reliability)", () => {
  it("one-sided sample sizes 90/95 29, 95/95 59, 99/95 299, two-sided 95/95 93", () => {
    expect([0.9, 0.95, 0.99].map((content) => testsForLeast(content, 0.95))).toEqual([29, 59, 299]);
    expect(testsForRange(0.95, 0.95)).toBe(93);
  });

  it("tests without failure: R .9 C .9 22, R .999 C .95 2995", () => {
    expect(testsWithoutFailure(0.9, 0.9)).toBe(22);
    expect(testsWithoutFailure(0.999, 0.95)).toBe(2995);
  });

  it("the least of 59 tests bounds the 5 % value at 95 %, the least of 58 does not", () => {
    expect(lowerBoundRank(59, 0.95, 0.95)).toBe(1);
    expect(lowerBoundRank(58, 0.95, 0.95)).toBeUndefined();
    expect(lowerBoundRank(93, 0.95, 0.95)).toBe(2);
  });

  it("Clopper–Pearson 29 of 30, and the upper bound of 0 of 10", () => {
    const [low, high] = clopperPearson(29, 30, 0.95);
    expect(low).toBeCloseTo(0.8278305, 7);
    expect(high).toBeCloseTo(0.9991564, 7);
    expect(shareUpperBound(0, 10, 0.95)).toBeCloseTo(0.25887, 5);
  });
});
