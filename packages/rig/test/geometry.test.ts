import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  backupNaturalLength,
  backupSectionLengths,
  chord,
  GENERIC_STOCKS,
  groundHeight,
  legForceFactor,
  mainNaturalLength,
  mainSectionLengths,
  naturalLengths,
  readRig,
  strainAt,
  tensionAt,
} from "../src/index.ts";
import { accepted, DEMO_NAMES, demoText } from "./demoRigs.ts";

const TABLE = [
  [0, 0],
  [0.01, 800],
  [0.02, 2000],
  [0.04, 5600],
  [0.08, 15000],
] as const;

describe("the slow-pull curve", () => {
  // Values of SciPy 1.17.1, scipy.interpolate.PchipInterpolator, the same method by another author.
  it.each([
    [0.005, 355],
    [0.015, 1343.9130434782608],
    [0.021, 2143.692170471493],
    [0.03, 3649.9311689801534],
    [0.05, 7689.421174142481],
    [0.079, 14729.312491754617],
    [0.08, 15000],
    [0.1, 15000 + 0.02 * 271666.6666666667],
  ])("at a strain of %d carries %d N, as an independent program has it", (strain, tension) => {
    expect(Math.abs(tensionAt(TABLE, strain) / tension - 1)).toBeLessThan(1e-12);
  });

  it("is a straight line through two points, on and on", () => {
    const line = GENERIC_STOCKS.get("polyester-webbing-25")!.curve;
    expect(tensionAt(line, 0.02)).toBeCloseTo(3000, 9);
    expect(tensionAt(line, 0.2)).toBeCloseTo(30000, 8);
    expect(strainAt(line, 30000)).toBeCloseTo(0.2, 12);
  });

  it("carries nothing when it is not stretched", () => {
    expect(tensionAt(TABLE, -0.01)).toBe(0);
    expect(strainAt(TABLE, 0)).toBe(0);
  });

  it("rises everywhere and gives back the strain of any tension", () => {
    const steps = fc.array(
      fc.tuple(fc.double({ min: 0.001, max: 0.1, noNaN: true }), fc.double({ min: 10, max: 9000, noNaN: true })),
      { minLength: 2, maxLength: 8 },
    );
    fc.assert(
      fc.property(steps, fc.double({ min: 0.001, max: 1.2, noNaN: true }), (moves, share) => {
        const curve: [number, number][] = [[0, 0]];
        for (const [strain, tension] of moves) curve.push([curve.at(-1)![0] + strain, curve.at(-1)![1] + tension]);
        const tension = share * curve.at(-1)![1];
        const strain = strainAt(curve, tension);
        if (strain === undefined) return tension > curve.at(-1)![1]; // an end that has gone flat never carries more
        // A steep curve turns the last bit of strain into this much tension.
        return Math.abs(tensionAt(curve, strain) - tension) < 1e-6 * curve.at(-1)![1];
      }),
      { seed: 20263, numRuns: 300 },
    );
  });
});

describe("lengths of a rig", () => {
  it("a 60 m line at 2.5 kN on webbing of 6 kN at 4 % is 60 / 1.01666… m long, unstretched", () => {
    const rig = { ...accepted(readRig(demoText("sound-rig"))).rig, rise: 0 };
    expect(mainNaturalLength(rig)).toBeCloseTo(60 / (1 + (0.04 * 2500) / 6000), 9);
  });

  it("a rise makes the distance longer than the span", () => {
    expect(chord({ span: 60, rise: 1.2 })).toBeCloseTo(Math.sqrt(3600 + 1.44), 12);
  });

  it.each(DEMO_NAMES)("the sections of %s, stretched by the standing tension, reach from anchor to anchor", (name) => {
    const { rig } = accepted(readRig(demoText(name)));
    const lengths = mainSectionLengths(rig);
    const reach = rig.main.sections.reduce(
      (sum, s, i) => sum + lengths[i]! * (1 + strainAt(s.stock.curve, rig.main.pretension)!),
      0,
    );
    expect(reach).toBeCloseTo(chord(rig), 9);
    const backup = backupSectionLengths(rig).reduce((sum, length) => sum + length, 0);
    expect(backup).toBeCloseTo(backupNaturalLength(rig), 9);
    expect(backup).toBeGreaterThan(chord(rig));
  });

  it("different webbings end to end carry the same tension, each with its own stretch", () => {
    const soft = GENERIC_STOCKS.get("polyamide-webbing-25")!.curve;
    const stiff = GENERIC_STOCKS.get("hmpe-webbing-25")!.curve;
    const [a, b] = naturalLengths(50, 3000, [{ curve: soft, length: 20 }, { curve: stiff }])!;
    expect(a! * (1 + tensionStrain(0.133333, 3000)) + b! * (1 + tensionStrain(0.01, 3000))).toBeCloseTo(50, 9);
  });

  it("sections that already reach across leave nothing for the rest", () => {
    const { curve } = GENERIC_STOCKS.get("hmpe-webbing-25")!;
    expect(naturalLengths(50, 0, [{ curve, length: 50 }, { curve }])).toBeUndefined();
  });
});

const tensionStrain = (atSix: number, tension: number) => (atSix * tension) / 6000;

describe("what lies around", () => {
  it("the ground is straight between the points of its profile and level beyond them", () => {
    const ground = [
      [0, 0],
      [10, -20],
      [30, -20],
      [40, 2],
    ] as const;
    expect([-5, 0, 5, 20, 35, 40, 50].map((x) => groundHeight({ ground }, x))).toEqual([0, 0, -10, -20, -9, 2, 2]);
  });

  // Statics: two equal legs, F = 2·F_leg·cos(θ/2). Values to eight digits from that formula; 120° is one exactly.
  it.each([
    [0, 0.5],
    [30, 0.51763809],
    [60, 0.57735027],
    [90, Math.SQRT1_2],
    [120, 1],
    [150, 1.93185165],
    [170, 5.73685662],
  ])("at %d° between them each of two legs carries %d of the load", (degrees, factor) => {
    expect(Math.abs(legForceFactor((degrees * Math.PI) / 180) / factor - 1)).toBeLessThan(1e-8);
  });
});

describe("the built-in webbings and ropes", () => {
  it.each([...GENERIC_STOCKS.values()])(
    "$name says on what its numbers rest, and never claims to be measured",
    (stock) => {
      expect(String(stock.rated.basis.note).length).toBeGreaterThan(20);
      expect(["from memory", "assumed"]).toContain(stock.rated.basis.kind);
      expect(stock.basis.kind).toBe("assumed");
    },
  );

  it("polyamide stretches more than polyester, and polyester more than HMPE", () => {
    const stretch = (id: string) => strainAt(GENERIC_STOCKS.get(id)!.curve, 6000)!;
    expect(stretch("polyamide-webbing-25")).toBeGreaterThan(2 * stretch("polyester-webbing-25"));
    expect(stretch("polyester-webbing-25")).toBeGreaterThan(2 * stretch("hmpe-webbing-25"));
  });

  it("a dynamic rope stays below 12 kN in the standard fall of EN 892, by the impact-force equation", () => {
    // F = mg + √((mg)² + 2·mg·EA·f), 80 kg, f = 4.6/2.6 (Wexler 1950; EN 892 limit quoted second-hand, 12 kN).
    for (const id of ["dynamic-rope-10", "dynamic-rope-9"]) {
      const [strain, tension] = GENERIC_STOCKS.get(id)!.curve[1]!;
      const weight = 80 * 9.80665;
      const force = weight + Math.sqrt(weight ** 2 + 2 * weight * (tension / strain) * (4.6 / 2.6));
      expect(force).toBeLessThan(12000);
      expect(force).toBeGreaterThan(7000);
    }
  });
});
