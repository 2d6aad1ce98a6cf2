import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { energyAt, slopeAt, strainAt, tensionAt, tensionCurve } from "../src/line/tensionCurve.ts";

/** Curves as a rigger could measure them: strains and tensions that rise. */
const curves = fc
  .array(fc.tuple(fc.double({ min: 0.002, max: 0.1, noNaN: true }), fc.double({ min: 1, max: 5000, noNaN: true })), {
    minLength: 1,
    maxLength: 8,
  })
  .map((rises) => {
    let [strain, tension] = [0, 0];
    const points: [number, number][] = [[0, 0]];
    for (const [e, T] of rises) {
      strain += e;
      tension += T;
      points.push([strain, tension]);
    }
    return points;
  });
const seed = { seed: 11, numRuns: 200 };

describe("the slow-pull curve", () => {
  it("goes through its points, never falls, and goes on straight", () => {
    fc.assert(
      fc.property(curves, (points) => {
        const curve = tensionCurve(points);
        for (const [strain, T] of points) expect(Math.abs(tensionAt(curve, strain) - T)).toBeLessThan(1e-9 * (1 + T));
        const last = points.at(-1)![0];
        let before = 0;
        for (let k = 1; k <= 300; k++) {
          const now = tensionAt(curve, (1.5 * last * k) / 300);
          expect(now).toBeGreaterThanOrEqual(before - 1e-9);
          before = now;
        }
        const beyond = [1.1, 1.2, 1.3].map((f) => tensionAt(curve, f * last));
        expect(Math.abs(beyond[2]! - 2 * beyond[1]! + beyond[0]!)).toBeLessThan(1e-7 * beyond[2]!);
        expect(tensionAt(curve, -0.1)).toBe(0);
      }),
      seed,
    );
  });

  it("has the slope and the energy that belong to it, and a strain for every tension", () => {
    fc.assert(
      fc.property(curves, fc.double({ min: 0.02, max: 1.4, noNaN: true }), (points, share) => {
        const curve = tensionCurve(points);
        const strain = share * points.at(-1)![0];
        const d = 1e-6 * strain;
        const slope = (tensionAt(curve, strain + d) - tensionAt(curve, strain - d)) / (2 * d);
        const scale = curve.maxSlope;
        expect(Math.abs(slopeAt(curve, strain) - slope)).toBeLessThan(1e-3 * scale);
        const T = tensionAt(curve, strain);
        const power = (energyAt(curve, strain + d) - energyAt(curve, strain - d)) / (2 * d);
        expect(Math.abs(power - T)).toBeLessThan(1e-5 * (1 + T));
        expect(slope).toBeLessThan(scale * (1 + 1e-3));
        expect(Math.abs(tensionAt(curve, strainAt(curve, T)) - T)).toBeLessThan(1e-9 * (1 + T));
      }),
      seed,
    );
  });
});
