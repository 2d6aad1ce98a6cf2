import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { estimateCost, type Problem, readProblem, simulate } from "../src/index.ts";
import { NoEquilibrium, settled } from "../src/statics/start.ts";
import { CUT, FALL, run } from "./rigs.ts";

/** A copy of a problem with one value put elsewhere. */
function changed(path: string, value: unknown, problem: object = CUT): unknown {
  const copy = structuredClone(problem) as Record<string, unknown>;
  const keys = path.split(".");
  let at = copy;
  for (const key of keys.slice(0, -1)) {
    at[key] ??= {};
    at = at[key] as Record<string, unknown>;
  }
  at[keys.at(-1)!] = value;
  return copy;
}
function faults(input: unknown) {
  const reading = readProblem(input);
  return reading.ok ? [] : reading.issues;
}
const line = { mass: 0.06, branches: [] };

describe("a problem that makes no sense is refused, with the place, what was got and what was expected", () => {
  const CASES: readonly (readonly [path: string, value: unknown, at?: string])[] = [
    ["span", Number.NaN],
    ["span", Number.POSITIVE_INFINITY],
    ["span", -60],
    ["span", "60 m"],
    ["duration", 0],
    ["walker.mass", 0],
    ["walker.mass", null],
    ["walker.at", 1.2],
    ["walker.at", 0],
    ["ring.mass", 0],
    ["ring.clearance", -0.1],
    ["ring.friction", -0.1],
    ["leash.length", 0],
    ["leash.strength", 0],
    ["main.pretension", -1],
    ["main.material.mass", 0],
    ["main.material.mass", Number.NEGATIVE_INFINITY],
    ["main.material.curve", [[0, 0]], "main.material.curve"],
    [
      "main.material.curve",
      [
        [0, 10],
        [0.1, 20],
      ],
      "main.material.curve[0]",
    ],
    [
      "main.material.curve",
      [
        [0, 0],
        [0.1, -500],
      ],
      "main.material.curve[1]",
    ],
    [
      "main.material.curve",
      [
        [0, 0],
        [0.1, 500],
        [0.2, 400],
      ],
      "main.material.curve[2]",
    ],
    [
      "main.material.curve",
      [
        [0, 0],
        [0.1, 500],
        [0.05, 600],
      ],
      "main.material.curve[2]",
    ],
    [
      "main.material.curve",
      [
        [0, 0],
        [0.1, Number.NaN],
      ],
      "main.material.curve[1]",
    ],
    ["main.material.branches", [[100, 0]], "main.material.branches[0][1]"],
    ["main.material.branches", [[100, -1]], "main.material.branches[0][1]"],
    ["main.material.branches", [[-100, 1]], "main.material.branches[0][0]"],
    ["main.material.branches", [[Number.NaN, 1]], "main.material.branches[0][0]"],
    ["main.material.branches", Array.from({ length: 9 }, () => [1, 1]), "main.material.branches"],
    ["backup.slack", -0.01],
    ["backup.connections", [{ at: 1.5 }], "backup.connections[0].at"],
    ["backup.connections", [{ at: 0.5, strength: -3 }], "backup.connections[0].strength"],
    ["backup.connections", [{ at: 0.5, strenght: 3 }], "backup.connections[0].strenght"],
    ["cut.at", -0.1],
    ["cut.at", 1.1],
    ["cut.time", -1],
    ["start", "sitting"],
    ["anchors.A.stiffness", -1e5],
    ["anchors.A.legs", [{ rock: [0, 0, 0], stiffness: 1e5 }], "anchors.A.legs[0].rock"],
    ["anchors.A.legs", [{ rock: [2, 0, 0], stiffness: 1e5 }], "anchors.A.legs"],
    ["main.weakZones", [{ from: 0.5, to: 0.4, strength: 1e4 }], "main.weakZones[0].to"],
    ["main.strength", 2000, "main.pretension"],
    ["main.material", undefined, "main"],
    [
      "ground",
      [
        [0, Number.NaN],
        [1, 2],
      ],
      "ground[0]",
    ],
    ["airDensity", -1],
    ["colour", "red"],
  ];
  for (const [path, value, at] of CASES) {
    it(`${path}: ${JSON.stringify(value) ?? String(value)}`, () => {
      const issues = faults(changed(path, value));
      expect(issues.map((issue) => issue.path)).toContain(at ?? path);
      for (const { got, expected } of issues) {
        expect(got).not.toBe("");
        expect(expected.length).toBeGreaterThan(5);
      }
    });
  }

  it("a leg that is not there cannot fail", () => {
    expect(faults(changed("legFailure", { anchor: "A", leg: 0, time: 1 })).map(({ path }) => path)).toContain(
      "legFailure.leg",
    );
  });

  it("sections must follow one another to the line's end", () => {
    const { material, ...main } = FALL.main;
    const sections = [
      { to: 0.5, material },
      { to: 0.4, material },
    ];
    expect(faults({ ...FALL, main: { ...main, sections } }).map(({ path }) => path)).toEqual([
      "main.sections[1].to",
      "main.sections[1].to",
    ]);
  });

  it("all faults are told at once", () => {
    const issues = faults({ ...CUT, span: 0, duration: -1, ring: { ...CUT.ring, mass: Number.NaN } });
    expect(issues.map(({ path }) => path).sort()).toEqual(["duration", "ring.mass", "span"]);
  });

  it("a rig of more elements than memory is refused with what would fit", () => {
    const [issue] = faults({ ...CUT, span: 90_000, duration: 10 });
    expect(issue!.path).toBe("span");
    expect(issue!.got).toMatch(/elements/);
    expect(issue!.expected).toMatch(/20000 m/);
    expect(faults({ ...CUT, span: 1000, duration: 10 })).toEqual([]);
  });

  it("whatever is put anywhere, the reader answers instead of throwing", () => {
    const paths = [
      "span",
      "main",
      "main.material",
      "main.material.curve",
      "backup.connections",
      "anchors.A.legs",
      "cut",
    ];
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.anything(), (path, value) => {
        const reading = readProblem(changed(path, value));
        expect(typeof reading.ok).toBe("boolean");
      }),
      { seed: 7, numRuns: 300 },
    );
    for (const input of [null, undefined, 3, "", [], [[]], () => 1]) expect(readProblem(input).ok).toBe(false);
  });

  it("and the tests' own rigs are taken", () => {
    expect(faults(FALL)).toEqual([]);
    expect(faults(CUT)).toEqual([]);
    expect(
      faults({
        ...CUT,
        backup: {
          ...CUT.backup,
          material: {
            ...line,
            curve: [
              [0, 0],
              [1, 9000],
            ],
          },
        },
      }),
    ).toEqual([]);
  });
});

describe("a rig that finds no rest", () => {
  it("is told by line, place and force out of balance", () => {
    const nothing = new Float64Array(3);
    const stuck = {
      ok: false,
      iterations: 400,
      residual: 12.34,
      worst: "backup at 0.250 of its length",
      main: nothing,
      backup: nothing,
      ring: nothing,
      masters: { A: nothing, B: nothing },
      xiMain: 0,
      xiBackup: 0,
      tension: 0,
    };
    expect(() => settled(stuck)).toThrow(NoEquilibrium);
    expect(() => settled(stuck)).toThrow(/12\.3 N out of balance at the backup at 0\.250/);
  });
});

describe("what no machine can step is refused before it runs", () => {
  const steep = (curve: readonly (readonly [number, number])[]) =>
    changed("leash.material", { mass: 0.08, curve, branches: [] });

  it("a leash whose curve has a step in it", () => {
    const input = steep([
      [0, 0],
      [0.1, 100],
      [0.1001, 40_000],
      [0.2, 50_000],
    ]);
    expect(faults(input)).toMatchObject([{ path: "leash.material", got: expect.stringContaining("km/s") }]);
    expect(simulate(input as Problem)).toMatchObject({ ok: false, reason: "limits" });
  });

  it("branches stiffer than any fibre, in a section of a line", () => {
    const { material } = CUT.main;
    const stiff = { ...material, mass: 0.002, branches: [[8e8, 0.003]] };
    const main = {
      pretension: 2500,
      sections: [
        { to: 0.5, material },
        { to: 1, material: stiff },
      ],
    };
    expect(faults({ ...CUT, main })).toMatchObject([{ path: "main.sections[1].material" }]);
  });

  it.each([
    ["a ring of no mass to speak of", changed("ring.mass", 1e-16), "ring.mass"],
    [
      "legs stiffer than any steel",
      changed("anchors", {
        A: {
          mass: 0.5,
          legs: [
            { rock: [-1, 0.5, 0], stiffness: 1e20 },
            { rock: [-1, -0.5, 0], stiffness: 1e20 },
          ],
        },
      }),
      "anchors",
    ],
  ])("%s", (_, input, path) => {
    expect(faults(input)).toMatchObject([{ path, expected: expect.stringContaining("steps") }]);
  });

  it("but the stiffest webbing there is, on the longest line that fits into memory, is not", () => {
    const hmpe = {
      mass: 0.02,
      curve: [
        [0, 0],
        [0.01, 10_000],
      ],
      branches: [[1e6, 0.003]],
    };
    const main = { pretension: 2500, material: hmpe };
    expect(faults({ ...CUT, span: 1000, main, duration: 60 })).toEqual([]);
  });

  it("the cost of a run is told beforehand: so many steps on so many elements", () => {
    const cost = estimateCost(CUT);
    const { mesh } = run(CUT, {});
    expect(cost.elements).toBe(mesh.elements);
    expect(cost.step).toBe(mesh.step);
    expect(Math.abs(cost.steps - mesh.steps)).toBeLessThanOrEqual(1);
    expect(cost.elementSteps).toBe(cost.elements * cost.steps);
    expect(estimateCost(CUT, { accuracy: "fine" }).elementSteps / cost.elementSteps).toBeGreaterThan(3.5);
  });
});

describe("a leg anchor stiffer than the lines", () => {
  it("shortens the step instead of blowing up", () => {
    const legs = [
      { rock: [-1, 0.5, 0], stiffness: 1e9 },
      { rock: [-1, -0.5, 0], stiffness: 1e9 },
    ] as const;
    const result = simulate(
      { ...CUT, anchors: { A: { mass: 0.5, legs } }, cut: { at: 1, time: 0.05 }, duration: 0.3 },
      { accuracy: "quick" },
    );
    expect(result).toMatchObject({ ok: true });
  });
});
