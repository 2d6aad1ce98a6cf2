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
} from "@secondline/statistics";
import { describe, expect, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";

const { check, keeps } = evidence("strengthTolerance");
const WILKS = "sample sizes and bounds of shares";
const COUNTED = { source: "reliability", where: WILKS, within: 0.5, why: "whole numbers" } as const;

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
function expectFactors(quantity: string, pairs: readonly (readonly [got: number, table: number])[]): void {
  check({ source: "toleranceTable", quantity, pairs, share: 1e-6, why: "the table has eight digits" });
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
    const pairs = factors.map((row) => [toleranceFactor(row.n!, 0.95, confidence), row[column]!] as const);
    expectFactors(`factors for the 5 % value at confidence ${confidence}, n = 2 to 100`, pairs);
  });

  it.each([
    [0.75, "k_sigma_known_P95_C75"],
    [0.9, "k_sigma_known_P95_C90"],
    [0.95, "k_sigma_known_P95_C95"],
  ])("factors for a known spread at confidence %s agree with the table over all n", (confidence, column) => {
    const pairs = factors.map((row) => [toleranceFactorKnownSpread(row.n!, 0.95, confidence), row[column]!] as const);
    expectFactors(`factors for a known spread at confidence ${confidence}, n = 2 to 100`, pairs);
  });

  it("the approximation fails where the table says so and agrees elsewhere", () => {
    for (const [confidence, column] of [
      [0.9, "k_nist_approx_P95_C90"],
      [0.95, "k_nist_approx_P95_C95"],
    ] as const) {
      const rows = factors.map((row) => [natrellaFactor(row.n!, 0.95, confidence), row[column]!] as const);
      for (const [got, table] of rows) if (Number.isNaN(table)) expect(got).toBeUndefined();
      const pairs = rows.flatMap(([got, table]) => (Number.isNaN(table) ? [] : [[got ?? Number.NaN, table] as const]));
      expectFactors(`Natrella's approximation at confidence ${confidence}`, pairs);
    }
  });

  it("NIST/SEMATECH e-Handbook 7.2.6.3: n = 43, content 0.90, confidence 0.99 (from memory, recomputed)", () => {
    const [exact, near] = [
      [toleranceFactor(43, 0.9, 0.99), 1.8739536],
      [natrellaFactor(43, 0.9, 0.99)!, 1.8751896],
    ] as const;
    const why = "seven digits are kept; recomputed by hand of the formula as well";
    check({ source: "nistTolerance", quantity: "factor, n = 43, 90 % at 99 %", pairs: [exact], within: 5e-7, why });
    check({ source: "nistTolerance", quantity: "its approximation", pairs: [near], within: 5e-7, why });
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
    const pairs = exact.map(([n, k]) => [toleranceFactor(n, 0.9, 0.95), k] as const);
    const quantity = "90/95 factors, n = 2 to 30";
    check({ source: "cmhFactors", quantity, pairs, within: 1e-4, why: "four digits after the point" });
  });

  it("needs two tests, and whole ones", () => {
    expect(() => toleranceFactor(1, 0.95, 0.75)).toThrow(/from 2, got 1/);
    expect(() => toleranceFactor(2.5, 0.95, 0.75)).toThrow(/whole number/);
  });
});

describe("EN 1990:2002 Annex D, clause D7.2, table D1", () => {
  it("agrees with the formula (computed) to 1e-6 over all n", () => {
    const known = factors.map((row) => [en1990Factor(row.n!, true), row.kn_VX_known!] as const);
    const unknown = factors.map((row) => [en1990Factor(row.n!, false), row.kn_VX_unknown!] as const);
    expectFactors("k_n of EN 1990, spread known, n = 2 to 100", known);
    expectFactors("k_n of EN 1990, spread unknown, n = 2 to 100", unknown);
  });

  it("agrees with the printed table (second hand, as an open R function has it), which is truncated and once off by more than 0.01", () => {
    const n = [1, 2, 3, 4, 5, 6, 8, 10, 20, 30];
    const known = [2.31, 2.01, 1.89, 1.83, 1.8, 1.77, 1.74, 1.72, 1.68, 1.67];
    const unknown = [undefined, undefined, 3.37, 2.63, 2.33, 2.18, 2.0, 1.92, 1.76, 1.73];
    const table = (values: readonly (number | undefined)[], isKnown: boolean) =>
      values.flatMap((k, i) => (k === undefined ? [] : [[en1990Factor(n[i]!, isKnown), k] as const]));
    const why = "the print is truncated, and once off by more than 0.01";
    const [one, other] = [table(known, true), table(unknown, false)];
    check({ source: "en1990", quantity: "k_n, spread known, n = 1 to 30", pairs: one, within: 0.017, why });
    check({ source: "en1990", quantity: "k_n, spread unknown, n = 3 to 30", pairs: other, within: 0.017, why });
  });
});

describe("order statistics (Wilks; documentation of the Python package reliability)", () => {
  it("one-sided sample sizes 90/95 29, 95/95 59, 99/95 299, two-sided 95/95 93", () => {
    const pairs = [
      [testsForLeast(0.9, 0.95), 29],
      [testsForLeast(0.95, 0.95), 59],
      [testsForLeast(0.99, 0.95), 299],
      [testsForRange(0.95, 0.95), 93],
    ] as const;
    check({ ...COUNTED, quantity: "number of tests that bound a quantile", pairs });
  });

  it("tests without failure: R .9 C .9 22, R .999 C .95 2995", () => {
    const pairs = [
      [testsWithoutFailure(0.9, 0.9), 22],
      [testsWithoutFailure(0.999, 0.95), 2995],
    ] as const;
    check({ ...COUNTED, quantity: "number of tests without a failure", pairs });
  });

  it("the least of 59 tests bounds the 5 % value at 95 %, the least of 58 does not", () => {
    expect(lowerBoundRank(59, 0.95, 0.95)).toBe(1);
    expect(lowerBoundRank(58, 0.95, 0.95)).toBeUndefined();
    expect(lowerBoundRank(93, 0.95, 0.95)).toBe(2);
  });

  it("Clopper–Pearson 29 of 30, and the upper bound of 0 of 10", () => {
    const [low, high] = clopperPearson(29, 30, 0.95);
    const none = shareUpperBound(0, 10, 0.95);
    const why = "half of the last digit that is printed";
    for (const [quantity, got, expected, within] of [
      ["lower bound of 29 of 30", low, 0.8278305, 5e-8],
      ["upper bound of 29 of 30", high, 0.9991564, 5e-8],
      ["upper bound of 0 of 10", none, 0.25887, 5e-6],
    ] as const)
      check({ source: "reliability", where: WILKS, quantity, pairs: [[got, expected]], within, why });
  });
});

keeps();
