import { normalCdf, seededRandom } from "@secondline/statistics";
import { describe, expect, it } from "vitest";
import { failureChances, partStrengths, type ReliabilityPart, reliabilityPart } from "../src/index.ts";
import { coverage, drawsOf, finished, type Truth, trueChances } from "./chanceTruths.ts";
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

const within = (found: number, exact: number, relative: number) =>
  expect(Math.abs(found / exact - 1)).toBeLessThan(relative);

const truth = (beta: number, more: Partial<Truth> = {}): Truth => ({
  slopes: [[0.08, -0.05, 0.06]],
  chance: 0.07,
  shared: 1,
  own: [0.1],
  cause: 0.05,
  beta: [beta],
  ...more,
});

describe("chances from draws", () => {
  it.each([1.5, 3.1, 4.7534])("hold the closed form of one part at %d deviations, from many draws closely", (beta) => {
    const { parts, draws } = drawsOf(truth(beta), 2000, 5);
    const { anyFails, parts: found } = finished(failureChances(parts, draws, { seed: 1, beliefs: 200, samples: 20 }));
    const exact = normalCdf(-beta);
    expect(anyFails).toEqual(found[0]!.fails);
    expect(anyFails.low).toBeLessThan(exact);
    expect(anyFails.high).toBeGreaterThan(exact);
    expect(anyFails.high / anyFails.low).toBeLessThan(2.5);
  });

  const several: Truth = truth(0, {
    slopes: [
      [0.08, -0.05, 0.06],
      [0.08, 0.05, 0.06],
      [0.02, 0.05, 0],
    ],
    own: [0.1, 0.15, 0.08],
    beta: [3.8, 3.9, 4.5],
    shared: 0.6,
  });

  it("of another seed are the same within their interval, by the same method", () => {
    const { parts, draws } = drawsOf(several, 64, 8);
    const [a, b] = [1, 2].map((seed) => finished(failureChances(parts, draws, { seed })));
    expect(Object.keys(a!)).toEqual(Object.keys(b!));
    for (const [one, other] of [a!.anyFails, ...a!.parts.map((part) => part.fails)].map(
      (share, i) => [share, [b!.anyFails, ...b!.parts.map((part) => part.fails)][i]!] as const,
    )) {
      expect(one.value).toBeGreaterThan(other.low);
      expect(one.value).toBeLessThan(other.high);
      within(other.value, one.value, 0.4);
    }
    const again = finished(failureChances(parts, draws, { seed: 1 }));
    expect(again).toEqual(a);
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8])("never have a part fail more often than any does (rig %d)", (seed) => {
    const random = seededRandom(seed);
    const some = (count: number, most: number) => Array.from({ length: count }, () => most * random.uniform());
    const count = 2 + (seed % 4);
    const { parts, draws } = drawsOf(
      {
        slopes: Array.from({ length: count }, () => some(4, 0.1)),
        chance: 0.15 * random.uniform(),
        shared: random.uniform(),
        own: some(count, 0.2),
        cause: 0.1,
        beta: some(count, 5),
      },
      [8, 16, 64][seed % 3]!,
      seed,
    );
    // Stretches of one line, and a part that only some draws load.
    const line = { id: "line", name: "Line" };
    const told = parts.map((part, i): ReliabilityPart => (i < 2 ? { ...part, stretchOf: line } : part));
    const loads = draws.loads.map((row, r) => row.map((load, i) => (i === count - 1 && r % 3 === 0 ? 0 : load)));
    const { anyFails, parts: found } = finished(
      failureChances(told, { ...draws, loads }, { seed, beliefs: 100, samples: 100 }),
    );
    for (const { fails, first } of found) {
      for (const end of ["value", "low", "high"] as const) expect(anyFails[end]).toBeGreaterThanOrEqual(fails[end]);
      expect(first.low).toBeLessThanOrEqual(first.value);
      expect(first.high).toBeGreaterThanOrEqual(first.value);
    }
    expect(found).toHaveLength(count - 1);
    expect(found.reduce((sum, { first }) => sum + first.value, 0)).toBeCloseTo(1, 9);
  });

  it("of a part that no draw loads with a twentieth of what it holds are none", () => {
    const { parts, draws } = drawsOf(several, 64, 8);
    const loads = draws.loads.map(([a, b], r) => [a!, b!, 10 * (r % 7)]);
    const found = finished(failureChances(parts, { ...draws, loads }, { seed: 1, beliefs: 50, samples: 50 }));
    expect(found.parts[2]).toMatchObject({ fails: { value: 0, high: 0 }, first: { value: 0 } });
  });

  it("of a part that some draws load are that share of what they would be", () => {
    const { parts, draws } = drawsOf(truth(1, { chance: 0.1, slopes: [[0]] }), 2000, 8);
    const loads = draws.loads.map(([load], r) => [r % 4 === 0 ? load! : 0]);
    const [part] = finished(failureChances(parts, { ...draws, loads }, { seed: 1, beliefs: 100, samples: 20 })).parts;
    const exact = normalCdf(-1) / 4;
    expect(part!.fails.low).toBeLessThan(exact);
    expect(part!.fails.high).toBeGreaterThan(exact);
    within(part!.fails.value, exact, 0.15);
  });

  it("come with the shares of the margin's variance, which add up to one and contain the true ones", () => {
    const one = truth(3);
    const { parts, draws } = drawsOf(one, 400, 3);
    const { shares } = finished(failureChances(parts, draws, { seed: 1, beliefs: 300, samples: 50 }));
    expect(shares.of).toBe("part 0");
    expect(shares.sources.reduce((sum, { share }) => sum + share.value, 0)).toBeCloseTo(1, 9);
    const whole = 0.08 ** 2 + 0.05 ** 2 + 0.06 ** 2 + 0.07 ** 2 + 0.1 ** 2 + 0.05 ** 2;
    const share = (told: (source: (typeof shares.sources)[number]["source"]) => boolean) =>
      shares.sources.find(({ source }) => told(source))!.share;
    const exact: [ReturnType<typeof share>, number][] = [
      [share((s) => s.kind === "input" && s.input === 0), 0.08 ** 2],
      [share((s) => s.kind === "input" && s.input === 1), 0.05 ** 2],
      [share((s) => s.kind === "chance"), 0.07 ** 2],
      [share((s) => s.kind === "strength" && s.name === "sun"), 0.05 ** 2],
    ];
    for (const [found, square] of exact) {
      expect(found.low).toBeLessThan(square / whole);
      expect(found.high).toBeGreaterThan(square / whole);
    }
  });
});

describe("intervals of chances from 64 draws", () => {
  // 120 rigs: of 95 % intervals between 107 and 120 contain the truth in all but one of some thousand such tests.
  it("contain the true chance at their rate, from one in a hundred to one in a million", () => {
    for (const beta of [2.326, 4.753]) {
      const { part, any } = coverage(truth(beta, { slopes: [[0.08, -0.05, 0.06, 0, 0, 0.04]] }), 64, 120);
      expect([beta, part >= 107 / 120, any >= 107 / 120]).toEqual([beta, true, true]);
    }
  }, 120_000);

  it("know the true chances of a truth", () => {
    expect(trueChances(truth(2)).part).toBeCloseTo(normalCdf(-2), 12);
  });
});
