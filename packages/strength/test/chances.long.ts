/** Over many true models: 95 % intervals of chances from 64 draws contain the true chance in 92 to 98 % of the cases. */
import { describe, expect, it } from "vitest";
import { coverage, type Truth } from "./chanceTruths.ts";

const RIGS = 500;
const even = (sign: number) => Array.from({ length: 10 }, (_, k) => (k % 3 === 0 ? -1 : 1) * sign * 0.05);
const few = (size: number) => [size, size / 2, 0, 0, 0, 0, 0, 0, 0, 0];

const TRUTHS: Readonly<Record<string, Omit<Truth, "beta">>> = {
  "many inputs of like weight": {
    slopes: [even(1), even(1), even(-1)],
    chance: 0.08,
    shared: 0.5,
    own: [0.1, 0.12, 0.08],
    cause: 0.06,
  },
  "two inputs that matter": {
    slopes: [few(0.12), few(0.1), few(0.05)],
    chance: 0.06,
    shared: 0.9,
    own: [0.08, 0.1, 0.12],
    cause: 0.05,
  },
  "next to nothing but chance": {
    slopes: [few(0.02), few(0.02), few(0.02)],
    chance: 0.15,
    shared: 0.3,
    own: [0.08, 0.08, 0.08],
    cause: 0.08,
  },
};

describe.each(Object.entries(TRUTHS))("with %s", (_, truth) => {
  it.each([2.326, 3.09, 3.719, 4.265, 4.753])(
    "at %d deviations",
    (beta) => {
      const { part, any } = coverage({ ...truth, beta: [beta, beta + 0.2, beta + 0.5] }, 64, RIGS);
      console.info(`part ${(100 * part).toFixed(1)} %, any ${(100 * any).toFixed(1)} %`);
      for (const share of [part, any]) {
        expect(share).toBeGreaterThanOrEqual(0.92);
        expect(share).toBeLessThanOrEqual(0.98);
      }
    },
    900_000,
  );
});
