import { describe, expect, it } from "vitest";
import {
  type FailureChances,
  failureChances,
  fitSurface,
  latinHypercube,
  type ReliabilityPart,
  type SurfaceInput,
  seededRandom,
} from "../src/index.ts";
import { normalCdf } from "../src/statistics/normal.ts";

/** Standard deviations that the simulated range reaches to. */
const REACH = 2.5;
const input = (name: string): SurfaceInput => ({ name, coordinate: (u) => u / REACH });
const part = (id: string, median: number, own: number, more: Partial<ReliabilityPart> = {}): ReliabilityPart => ({
  id,
  name: id,
  median,
  own,
  causes: {},
  ...more,
});
const design = (runs: number, dimension: number, seed = 1) => latinHypercube(runs, dimension, seededRandom(seed));

function finished(...given: Parameters<typeof failureChances>): FailureChances {
  const work = failureChances(...given);
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

describe("a Latin hypercube", () => {
  const points = design(40, 7);

  it("has every input once in every stretch of its range", () => {
    for (let i = 0; i < 7; i++) {
      const stretches = points.map((point) => Math.floor(((point[i]! + 1) / 2) * 40));
      expect([...stretches].sort((a, b) => a - b)).toEqual(Array.from({ length: 40 }, (_, r) => r));
    }
  });

  it("is the same for the same seed", () => {
    expect(design(40, 7)).toEqual(points);
    expect(design(40, 7, 2)).not.toEqual(points);
  });
});

describe("a response surface", () => {
  const quadratic = ([a, b, c]: readonly number[]) => 8 + 0.2 * a! - 0.1 * b! + 0.06 * a! * b! + 0.05 * c! * c!;

  it("is the function itself where that is a quadratic of few terms, though it has six inputs and 40 points", () => {
    const points = design(40, 6);
    const surface = fitSurface(points, points.map(quadratic));
    expect(surface.terms).toBe(4);
    expect(surface.error).toBeLessThan(1e-9);
    expect(surface.explained).toBeGreaterThan(1 - 1e-9);
    for (const point of design(20, 6, 9)) expect(surface.value(point)).toBeCloseTo(quadratic(point), 9);
  });

  it("tells from left-out points how far it is off, neither less nor much more", () => {
    const points = design(60, 5);
    const random = seededRandom(3);
    const noise = 0.05;
    const surface = fitSurface(
      points,
      points.map((point) => quadratic(point) + noise * random.normal()),
    );
    const fresh = design(400, 5, 8);
    const off = Math.sqrt(
      fresh.reduce((sum, point) => sum + (surface.value(point) - quadratic(point)) ** 2, 0) / fresh.length,
    );
    expect(surface.error).toBeGreaterThan(0.8 * Math.hypot(noise, off));
    expect(surface.error).toBeLessThan(1.4 * Math.hypot(noise, off));
  });

  it("claims to explain next to nothing of noise, though it might run through many points", () => {
    const random = seededRandom(5);
    const points = design(40, 6);
    const surface = fitSurface(
      points,
      points.map(() => random.normal()),
    );
    expect(surface.explained).toBeLessThan(0.2);
    expect(surface.error).toBeGreaterThan(0.8);
  });

  it("goes on straight beyond the points", () => {
    const points = design(30, 1);
    const surface = fitSurface(
      points,
      points.map(([a]) => a! * a!),
    );
    const [at1, at2, at3] = [1, 2, 3].map((a) => surface.value([a]));
    expect(at2! - at1!).toBeCloseTo(2, 9);
    expect(at3! - at2!).toBeCloseTo(2, 9);
  });
});

describe("the whole chain on lognormal loads and strengths, where everything has a closed form", () => {
  // ln load = 8 + 0.1 u1 + 0.06 u2; ln strength = ln median + 0.12 of its own + 0.05 of the sun.
  const load = ([a, b]: readonly number[]) => Math.exp(8 + 0.1 * REACH * a! + 0.06 * REACH * b!);
  const inputs = ["mass", "tension", "of no account"].map(input);
  const points = design(32, 3);
  const sigma = Math.hypot(0.1, 0.06, 0.12, 0.05);
  const chances = (beta: number) =>
    finished(
      inputs,
      [part("leash", Math.exp(8 + beta * sigma), 0.12, { causes: { sun: 0.05 } }), part("bolt", 1e6, 0.2)],
      { points, loads: points.map((point) => [load(point), load(point)]) },
      { seed: 4 },
    );

  it("holds the probability of failure in its interval", () => {
    const { method, first, small } = chances(1.5);
    expect(method).toBe("surface");
    expect(small).toBeUndefined();
    expect(first.anyFails.low).toBeLessThan(normalCdf(-1.5));
    expect(first.anyFails.high).toBeGreaterThan(normalCdf(-1.5));
    expect(first.likeliest.id).toBe("leash");
  });

  it("holds one in a million in its interval, by conditional sampling, and says how much of it was extrapolated", () => {
    const exact = normalCdf(-4.7534);
    expect(exact).toBeCloseTo(1e-6, 8);
    const { small, beyond } = chances(4.7534);
    expect(small!.reached).toBe(true);
    expect(small!.low).toBeLessThan(exact);
    expect(small!.high).toBeGreaterThan(exact);
    expect(small!.spread).toBeLessThan(0.6);
    // At the likeliest point of failure the first input is at 4.75 · 0.1/0.175 = 2.7 deviations, beyond the 2.5 simulated.
    expect(beyond).toBeGreaterThan(0.4);
  });

  it("gives each input its share of the variance, and none to one that does nothing", () => {
    const { shares } = chances(1.5);
    const of = (name: string) => shares.find((one) => one.name === name)!;
    const exact = { mass: 0.1, tension: 0.06, "leash, its own": 0.12, sun: 0.05, "of no account": 0 };
    for (const [name, part] of Object.entries(exact)) {
      expect(Math.abs(of(name).first.value - (part / sigma) ** 2)).toBeLessThan(0.05);
      expect(of(name).first.low).toBeLessThanOrEqual((part / sigma) ** 2 + 1e-9);
      expect(of(name).first.high).toBeGreaterThanOrEqual((part / sigma) ** 2 - 1e-9);
    }
    expect(of("mass").kind).toBe("input");
    expect(of("sun").kind).toBe("strength");
    expect(of("what the surfaces miss").kind).toBe("surface");
  });

  it("is the same for the same seed", () => {
    expect(chances(2)).toEqual(chances(2));
  });
});

describe("what a surface misses", () => {
  const points = design(48, 2);
  const random = seededRandom(12);
  const noisy = (noise: number) => points.map((p) => [Math.exp(8 + 0.2 * p[0]! + noise * random.normal())]);

  it("widens the scatter of the margin", () => {
    const strength = [part("leash", Math.exp(8.4), 0.1)];
    const fails = (noise: number) =>
      finished([input("a"), input("b")], strength, { points, loads: noisy(noise) }, { seed: 2 }).first.anyFails.value;
    expect(fails(0.04)).toBeGreaterThan(1.2 * fails(0));
  });

  it("makes the runs themselves count when it is too much: no shares, no small probability, wide intervals", () => {
    const chances = finished(
      [input("a"), input("b")],
      [part("leash", Math.exp(9), 0.1), part("bolt", Math.exp(9.15), 0.2)],
      { points, loads: noisy(0.5).map(([load]) => [load!, load!]) },
      { seed: 2 },
    );
    expect(chances.method).toBe("runs");
    expect(chances.shares).toEqual([]);
    expect(chances.small).toBeUndefined();
    const worst = chances.surfaces.find(({ matters }) => matters)!;
    expect(worst.error).toBeGreaterThan(worst.limit);
    const { value, low, high } = chances.first.likeliest.first;
    expect(high - low).toBeGreaterThan(0.15);
    expect(value).toBeGreaterThan(0.5);
  });

  it("is of no account for a load that is next to nothing beside the strength", () => {
    const whips = points.map((point, r) => [Math.exp(8 + 0.2 * point[0]!), r % 3 === 0 ? 0 : 10 * random.uniform()]);
    const chances = finished(
      [input("a"), input("b")],
      [part("leash", Math.exp(8.5), 0.1), part("backup", 30_000, 0.1)],
      { points, loads: whips },
      { seed: 2 },
    );
    expect(chances.method).toBe("surface");
    expect(chances.first.parts.find(({ id }) => id === "backup")!.fails.value).toBe(0);
  });
});

describe("runs made once more in a better way", () => {
  const points = design(32, 1);
  const loads = points.map(([a]) => [8000 * Math.exp(0.1 * REACH * a!)]);
  const fails = (corrections: readonly (readonly number[])[], times = 1) =>
    finished(
      [input("a")],
      [part("leash", 11_000, 0.1)],
      { points, loads: loads.map(([load]) => [load! * times]), corrections },
      { seed: 5 },
    ).first.anyFails.value;

  it("correct all loads by their mean", () => {
    expect(fails([[0.2], [0.2], [0.2]])).toBeCloseTo(fails([], Math.exp(0.2)), 12);
  });

  it("widen the scatter when they disagree", () => {
    expect(fails([[0.2], [-0.2]])).toBeGreaterThan(1.5 * fails([[0], [0]]));
  });
});

describe("how much a surface may miss", () => {
  it("is not more for corrections that disagree: their scatter is none of the inputs'", () => {
    const points = design(32, 1);
    const limit = (corrections: readonly (readonly number[])[]) =>
      finished(
        [input("a")],
        [part("leash", 11_000, 0.1)],
        { points, loads: points.map(([a]) => [8000 * Math.exp(0.1 * REACH * a!)]), corrections },
        { seed: 5 },
      ).surfaces[0]!.limit;
    expect(limit([[0.3], [-0.3]])).toBeCloseTo(limit([[0], [0]]), 12);
    // A quarter more scatter than load and strength have together.
    expect(limit([[0.3], [-0.3]])).toBeCloseTo(0.75 * Math.hypot(0.1, 0.1), 2);
  });
});

describe("stretches of one webbing", () => {
  const stretch = (id: string, median: number) =>
    part(id, median, 0.1, { stretchOf: { id: "main", name: "Main line" } });
  const chances = finished(
    [input("a")],
    [stretch("main/0", 12_000), stretch("main/1", 9000), part("leash", 11_000, 0.1)],
    { points: design(24, 1), loads: design(24, 1).map(([a]) => new Array(3).fill(8000 * Math.exp(0.1 * a!))) },
    { seed: 1 },
  );

  it("are one part, whose weakest is named", () => {
    expect(chances.first.parts.map(({ id, name }) => [id, name])).toEqual([
      ["main", "Main line"],
      ["leash", "leash"],
    ]);
    expect(chances.first.parts[0]!.stretch).toBe("main/1");
    expect(chances.first.parts.reduce((sum, one) => sum + one.first.value, 0)).toBeCloseTo(1, 12);
  });

  it("are one source of scatter", () => {
    const own = chances.shares.filter(({ name }) => name.endsWith("its own")).map(({ name }) => name);
    expect(own).toEqual(["Main line, its own", "leash, its own"]);
  });
});
