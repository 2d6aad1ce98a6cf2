import { describe, expect, it } from "vitest";
import {
  firstToFail,
  lognormalInput,
  marginShares,
  normalSpace,
  partStrengths,
  type ReliabilityModel,
  reliabilityPart,
  smallFailureProbability,
  subsetSampling,
  uniformInput,
} from "../src/index.ts";
import { asNew, exampleRig, section } from "./exampleRig.ts";

const parts = partStrengths(
  exampleRig({ main: { ...exampleRig().main, sections: [section({ condition: { ...asNew, monthsOutside: 10 } })] } }),
);
const part = (id: string) => reliabilityPart(parts.find((p) => p.id === id)!);

describe("a part's scatter, split into shared causes and its own", () => {
  it("adds up to the part's whole scatter", () => {
    for (const whole of parts) {
      const { causes, own } = reliabilityPart(whole);
      const squares = Object.values(causes).reduce((sum, c) => sum + c * c, own * own);
      expect(Math.sqrt(squares)).toBeCloseTo(whole.sigmaLog, 12);
    }
  });

  it("webbing and the webbing in its weblock err together, webbing and bolt do not", () => {
    const shared = (a: string, b: string) => Object.keys(part(a).causes).filter((cause) => cause in part(b).causes);
    expect(shared("main", "endA")).toEqual(["make of pes", "sun on polyester"]);
    expect(shared("main", "anchorA.points.0")).toEqual([]);
  });
});

describe("first to fail", () => {
  const model: ReliabilityModel = {
    inputs: [lognormalInput("walker", 80, 0.1), uniformInput("place", 0.2, 0.8)],
    parts: [part("leash"), part("main"), part("anchorA.points.0")],
    loads: ([mass, place]) => [mass! * 60, mass! * 60 * (1 + place!), 0],
  };

  it("is the same for the same seed and differs for another", () => {
    const run = (seed: number) => firstToFail(model, { runs: 2000, seed });
    expect(run(1)).toEqual(run(1));
    expect(run(1)).not.toEqual(run(2));
  });

  it("the shares add up to one, an unloaded part is never first", () => {
    const found = firstToFail(model, { runs: 5000, seed: 4 });
    expect(found.parts.reduce((sum, p) => sum + p.first.value, 0)).toBeCloseTo(1, 12);
    expect(found.parts[2]!.first).toMatchObject({ value: 0, low: 0 });
    expect(found.likeliest.id).toBe("leash");
    expect(found.sentence).toMatch(/^Leash.* is first to fail with \d+ % \(\d+ to \d+ %\)$/);
  });

  it("common causes make joint failure likelier than independent ones would", () => {
    const twins = (own: number, shared: number): ReliabilityModel => ({
      inputs: [],
      parts: ["a", "b"].map((id) => ({ id, name: id, median: 1.2, own, causes: { sun: shared } })),
      loads: () => [1, 1],
    });
    const any = (m: ReliabilityModel) => firstToFail(m, { runs: 20_000, seed: 6 }).anyFails.value;
    expect(any(twins(0, 0.2))).toBeLessThan(0.75 * any(twins(0.2, 0)));
  });

  it("throws for loads that are no numbers", () => {
    const broken = { ...model, loads: () => [Number.NaN, 1, 1] };
    expect(() => normalSpace(broken).logMargins(new Float64Array(20))).toThrow(/no load was given for Leash/);
  });
});

describe("conditional sampling", () => {
  it("agrees with plain sampling where both can be done", () => {
    const model: ReliabilityModel = { inputs: [], parts: [part("leash")], loads: () => [9500] };
    const plain = firstToFail(model, { runs: 40_000, seed: 2 }).anyFails;
    const small = smallFailureProbability(model, { seed: 3 });
    expect(small.low).toBeLessThan(plain.high);
    expect(small.high).toBeGreaterThan(plain.low);
  });

  it("says so when failure is out of reach, and then gives a bound", () => {
    const out = subsetSampling(() => 5, 2, { seed: 1, perLevel: 100, mostLevels: 3 });
    expect(out).toMatchObject({ reached: false, low: 0, value: 0.03 });
  });
});

it("a load that matters more has the larger share of the margin's variance", () => {
  const model: ReliabilityModel = {
    inputs: [lognormalInput("large", 1, 0.3), lognormalInput("small", 1, 0.05)],
    parts: [{ id: "a", name: "a", median: 10, causes: {}, own: 0.1 }],
    loads: ([large, small]) => [large! * small!],
  };
  const shares = marginShares(model, { rows: 4000, seed: 8 });
  expect(shares.map((s) => s.name)).toEqual(["large", "small", "a, its own"]);
  // ln load is a sum of normals: the shares are those of the variances.
  const variances = [Math.log1p(0.09), Math.log1p(0.0025), 0.01];
  const total = variances.reduce((a, b) => a + b);
  shares.forEach((s, i) => {
    expect(Math.abs(s.first.value - variances[i]! / total)).toBeLessThan(0.03);
  });
});
