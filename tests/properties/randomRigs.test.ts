/** Rigs by chance: each is computed with numbers that are numbers, or fails in words. `tests/long/randomRigs.long.ts` looks at many more. */
import { describe, expect, it } from "vitest";
import { type Looked, lookAt } from "./randomRigs.ts";

const SEEDS = Array.from({ length: 16 }, (_, i) => i + 1);
const all = new Map<number, Looked>();

describe("a rig by chance", () => {
  it.each(SEEDS)("gives finite numbers, or says in words why it gives none: %i", (seed) => {
    const one = lookAt(seed);
    all.set(seed, one);
    if (one.kind === "run") expect(one.faults).toEqual([]);
    else expect(one.why).toMatch(/\w{3,} .*\d/);
  });

  it("is a rig mostly, and hardly ever fails", () => {
    const of = (kind: Looked["kind"]) => [...all.values()].filter((one) => one.kind === kind).length;
    expect(of("refused")).toBeLessThan(SEEDS.length / 4);
    expect(of("failed")).toBeLessThanOrEqual(1);
  });
});
