import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BreakTest, factorsFromLog, noteFact, partStrengths, stockResiduals, testUseWords } from "../src/index.ts";
import { exampleRig, leashRope, polyesterWebbing, section } from "./exampleRig.ts";

const pulled = (value: number, given: Partial<BreakTest> = {}): BreakTest => ({
  part: "webbing",
  material: polyesterWebbing.id,
  state: "new",
  wet: true,
  outcome: "broke",
  result: { kind: "exact", value },
  ...given,
});
const dry = { wet: false } as const;
const sunned = { state: "sun", sunMonths: 12, falls: 0 } as const;

const main = (log: readonly BreakTest[], wet: boolean, monthsOutside = 0) => {
  const sections = [section({ condition: { monthsOutside, sun: 1, ageYears: 0, wet } })];
  const rig = exampleRig({ main: { ...exampleRig().main, sections } });
  return partStrengths(rig, factorsFromLog(log)).find((part) => part.id === "main")!;
};

describe("tests that were pulled wet", () => {
  it.each([true, false])("lower a strength that they contradict, whether the rig is wet (%s) or not", (wet) => {
    for (const log of [[pulled(20_000)], [pulled(20_000), pulled(30_000, dry)]]) {
      expect(main(log, wet).strength).toBeCloseTo(20_000, 3);
      expect(main(log, wet).strength5).toBeLessThan(0.7 * main([], wet).strength5);
    }
  });

  it("count in a state with more wear, and not in one without it", () => {
    const log = [pulled(12_000, sunned)];
    expect(main(log, true, 12).strength).toBeLessThanOrEqual(12_000 * (1 + 1e-9));
    expect(main(log, true, 24).strength).toBeLessThanOrEqual(12_000 * (1 + 1e-9));
    expect(main(log, true).strength).toBeCloseTo(main([], true).strength, 6);
  });

  it("raise nothing, nor do wet pieces that did not break", () => {
    const survived = pulled(20_000, { outcome: "stopped", result: { kind: "above", value: 20_000 } });
    for (const log of [[pulled(45_000)], [survived], [pulled(45_000), survived]]) {
      expect(main(log, true)).toEqual(main([], true));
      expect(main(log, false)).toEqual(main([], false));
    }
    expect(stockResiduals(polyesterWebbing, [pulled(20_000)])).toBeUndefined();
  });

  it("are told of, where they lower and where they do not", () => {
    const [none, ...why] = testUseWords([polyesterWebbing], [pulled(20_000)]);
    expect(none).toEqual(noteFact("tests.noneButWet", { all: 1 }));
    expect(why).toEqual([
      noteFact("tests.leftOut", { list: { list: [noteFact("tests.wet", { count: 1 })], joined: "semicolon" } }),
      noteFact("tests.wetHeldLess", { stocks: { list: [{ stock: polyesterWebbing.name }], joined: "and" } }),
    ]);
    const high = testUseWords([polyesterWebbing], [pulled(45_000)]);
    expect(high[0]).toEqual(noteFact("tests.none", { all: 1 }));
    expect(high).toHaveLength(2);
  });

  it("are taken for what they would have held dry: nylon loses 15 % in the wet", () => {
    const leash = (value: number) => {
      const knot = { part: "leash", material: leashRope.id, knot: "figureEight" } as const;
      const rig = exampleRig();
      const wet = { ...rig, leash: { ...rig.leash, condition: { ...rig.leash.condition, wet: true } } };
      return [rig, wet].map((one) => {
        return partStrengths(one, factorsFromLog([pulled(value, knot)])).find(({ id }) => id === "leash")!.strength;
      });
    };
    const [built, low] = [leash(100_000), leash(6000)];
    expect(low[0]! / built[0]!).toBeCloseTo(6000 / (0.85 * 0.61 * 22_000), 6);
    expect(low[1]! / built[1]!).toBeCloseTo(low[0]! / built[0]!, 9);
  });

  it("raise no strength when one of them, or a dry one, held less", () => {
    const load = fc.double({ min: 4000, max: 60_000, noNaN: true });
    const state = fc.constantFrom({}, sunned);
    const test = fc.tuple(load, state, fc.boolean()).map(([value, of, wet]) => pulled(value, { ...of, wet }));
    const share = fc.double({ min: 0.3, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(test, { minLength: 1, maxLength: 5 }), fc.nat(4), share, (log, at, less) => {
        const lowered = log.map((one, i) => {
          const { value } = one.result as { value: number };
          return i === at % log.length ? { ...one, result: { kind: "exact", value: value * less } as const } : one;
        });
        for (const months of [0, 6, 12, 20]) {
          const [before, after] = [main(log, true, months), main(lowered, true, months)];
          expect(after.strength).toBeLessThanOrEqual(before.strength * (1 + 1e-9));
        }
      }),
      { seed: 8, numRuns: 150 },
    );
  });
});
