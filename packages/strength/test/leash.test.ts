import type { Condition, KnotKind, Rig } from "@secondline/rig";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { partStrengths } from "../src/index.ts";
import { exampleRig, leashRope } from "./exampleRig.ts";

type Knots = Rig["leash"]["knots"];

const outside = (monthsOutside: number): Condition => ({
  monthsOutside,
  sun: 0,
  ageYears: monthsOutside / 12,
  wet: false,
});

function leash(knots: Knots, condition: Condition) {
  const rig = exampleRig();
  return partStrengths({ ...rig, leash: { ...rig.leash, knots, condition } }).find(({ id }) => id === "leash")!;
}

const sewn: Knots = [];
const atHarness: Knots = [{ kind: "figureEight", where: "harness" }];
const inMiddle: Knots = [{ kind: "figureEight", where: "middle" }];

describe("a leash", () => {
  it("with one knot has a seam at its other end, which ages as that of a sewn one does", () => {
    const old = outside(40);
    expect(leash(atHarness, old).strength5).toBeCloseTo(leash(sewn, old).strength5, 9);
    expect(leash(inMiddle, old).strength5).toBeCloseTo(leash(sewn, old).strength5, 9);
    expect(leash(atHarness, old).weakest).toEqual({ at: 0, reason: "stitching" });
    expect(leash(atHarness, old).beyond).toHaveLength(1);
  });

  it("with sewn ends keeps of its rope what a seam keeps, for it is rated as the bare rope", () => {
    const fresh = leash(sewn, outside(0));
    expect(fresh.strength).toBeCloseTo(0.8 * leashRope.rated.strength, 6);
    expect(fresh.factors.map(({ name }) => name)).toContain("sewing");
  });

  it("with a knot at either end has no seam", () => {
    const both: Knots = [
      { kind: "figureEight", where: "ring" },
      { kind: "figureEight", where: "harness" },
    ];
    const { factors } = leash(both, outside(12));
    expect(factors.filter(({ cause }) => cause === "sewing")).toEqual([]);
  });

  it("is never stronger for a knot more in its middle, nor for more time outside", () => {
    const kind = fc.constantFrom<KnotKind>("figureEight", "bowline", "barrel", "overhand", "unknown");
    const where = fc.constantFrom("ring" as const, "middle" as const, "harness" as const);
    const knots = fc.array(fc.record({ kind, where }), { maxLength: 3 });
    const months = fc.double({ min: 0, max: 60, noNaN: true });
    fc.assert(
      fc.property(knots, kind, months, months, (some, more, a, b) => {
        const before = leash(some, outside(Math.min(a, b)));
        for (const worse of [
          leash([...some, { kind: more, where: "middle" }], outside(Math.min(a, b))),
          leash(some, outside(Math.max(a, b))),
        ]) {
          expect(worse.strength).toBeLessThanOrEqual(before.strength * (1 + 1e-12));
          expect(worse.strength5).toBeLessThanOrEqual(before.strength5 * (1 + 1e-12));
        }
      }),
      { seed: 11, numRuns: 200 },
    );
  });
});
