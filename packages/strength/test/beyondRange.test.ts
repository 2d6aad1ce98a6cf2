import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ageFactor } from "../src/derating/age.ts";
import { bendFactor } from "../src/derating/bend.ts";
import { clampFactor } from "../src/derating/clampMark.ts";
import { abrasionFactor, cutFactor } from "../src/derating/damage.ts";
import type { StrengthFactor } from "../src/derating/factor.ts";
import { fallsFactor } from "../src/derating/falls.ts";
import { lowValue } from "../src/derating/lognormal.ts";
import { heatFactor, sheathSlipFactor } from "../src/derating/rope.ts";
import { sewingFactor, sewnLoopAgeing } from "../src/derating/sewing.ts";
import { sunFactor } from "../src/derating/sun.ts";
import { noteFact, partStrengths } from "../src/index.ts";
import { exampleRig, polyesterWebbing, section } from "./exampleRig.ts";

/** Every factor of a quantity, up to far beyond its range; of a bend the quantity is the sharpness. */
const FACTORS: readonly (readonly [name: string, factor: (quantity: number) => StrengthFactor, most: number])[] = [
  ["abrasion", abrasionFactor, 1.5],
  ["cut", cutFactor, 1.5],
  ["glazing", heatFactor, 1.5],
  ["sheath slip", sheathSlipFactor, 1],
  ["falls", (n) => fallsFactor(n, "webbing"), 2000],
  ["age", ageFactor, 150],
  ["clamp mark", clampFactor, 600],
  ["seam", sewingFactor, 600],
  ["sewn loop", sewnLoopAgeing, 600],
  ["bend", (sharpness) => bendFactor(1 / (0.1 + sharpness)), 20],
  ["sun on polyester", (m) => sunFactor("polyester", m), 900],
  ["sun on polyamide", (m) => sunFactor("polyamide", m), 900],
  ["sun on HMPE", (m) => sunFactor("hmpe", m), 900],
  ["sun on aramid", (m) => sunFactor("aramid", m), 900],
];

describe("beyond its range", () => {
  it.each(FACTORS)("more of it never makes a part stronger: %s", (_, factor, most) => {
    const quantity = fc.double({ min: 0, max: most, noNaN: true });
    fc.assert(
      fc.property(quantity, quantity, (a, b) => {
        const [less, more] = [factor(Math.min(a, b)), factor(Math.max(a, b))];
        expect(more.value).toBeLessThanOrEqual(less.value * (1 + 1e-12));
        expect(lowValue(more)).toBeLessThanOrEqual(lowValue(less) * (1 + 1e-12));
        expect(more.value).toBeGreaterThan(0);
        expect(Number.isFinite(more.spread)).toBe(true);
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  it("no more than half of the value at the edge counts, and no more than the line drawn on", () => {
    expect(abrasionFactor(0.41).value).toBeCloseTo(0.3, 12);
    expect(abrasionFactor(0.9).value).toBeCloseTo(0.1, 12);
    expect(cutFactor(0.5).value).toBeCloseTo(0.2, 12);
    expect(cutFactor(0.6).value).toBeCloseTo(1 - 1.5 * 0.6, 12);
    expect(heatFactor(0.99).value).toBeCloseTo(0.01, 12);
    expect(sunFactor("polyamide", 60).value).toBeCloseTo(1 - (0.55 * 60) / 36, 12);
    expect(ageFactor(70).value).toBeCloseTo(0.3, 12);
    // Curves that level off stay above half of their edge.
    expect(fallsFactor(4000, "webbing").value).toBeCloseTo(0.5 * fallsFactor(400, "webbing").value, 12);
  });

  it.each([
    ["worn away", abrasionFactor(1)],
    ["cut through", cutFactor(1)],
    ["glazed through", heatFactor(1)],
    ["in the sun for 50 years", sunFactor("hmpe", 600)],
    ["with a sheath slipped by half", sheathSlipFactor(0.5)],
  ])("nothing is left of what is %s", (_, { value, beyond }) => {
    expect(beyond).toBe(true);
    expect(value).toBeLessThan(1e-5);
  });

  it("a main line that is worn away by 99 % holds a hundredth, and the note names the range", () => {
    const worn = (depth: number) => {
      const wear = [{ kind: "abrasion", from: 20, to: 21, depth }] as const;
      const rig = exampleRig();
      return partStrengths({ ...rig, main: { ...rig.main, sections: [section({ wear })] } });
    };
    const main = worn(0.99).find(({ id }) => id === "main")!;
    expect(main.strength).toBeCloseTo(0.01 * 30_000, 6);
    expect(main.beyond).toEqual([
      noteFact("beyond.known", {
        name: { brought: "Main line" },
        factor: { brought: "abrasion" },
        outside: noteFact("outside.quantity", {
          quantity: { brought: "share of the width" },
          got: 0.99,
          from: 0,
          to: 0.4,
        }),
      }),
    ]);
    expect(worn(0.4).every(({ beyond }) => beyond === undefined)).toBe(true);
  });

  it("is told of a weblock whose metal is weaker than its webbing, if that is beyond the range of a factor", () => {
    const rig = exampleRig();
    const endA = { ...rig.main.endA, rated: { ...rig.main.endA.rated, strength: 3000 }, monthsClamped: 30 };
    const sections = [section({ stock: polyesterWebbing })];
    const end = partStrengths({ ...rig, main: { ...rig.main, sections, endA } }).find(({ id }) => id === "endA")!;
    expect(end.strength).toBeCloseTo(0.95 * 3000, 6);
    expect(end.beyond).toHaveLength(1);
  });
});
