/** The slow-pull curve is written in the engine and in the rig package, which may not know each other: they must be one curve. */
import { BareLine } from "@secondline/engine";
import { GENERIC_STOCKS, strainAt, tensionAt } from "@secondline/rig";
import fc from "fast-check";
import { describe, it } from "vitest";
import { close } from "../support/close.ts";

type Curve = readonly (readonly [strain: number, tension: number])[];

/** The engine's slow-pull tension: that of a relaxed piece of one metre [N]. */
function engineTension(curve: Curve, strain: number): number {
  const line = new BareLine({ make: { material: { mass: 0.06, curve, branches: [] } }, length: 1, elements: 1 });
  line.lay([0, 0, 0], [1 + strain, 0, 0]);
  return line.tension(0);
}

const curves = fc
  .array(fc.tuple(fc.double({ min: 0.002, max: 0.1, noNaN: true }), fc.double({ min: 1, max: 5000, noNaN: true })), {
    minLength: 1,
    maxLength: 8,
  })
  .map((rises): Curve => {
    let [strain, tension] = [0, 0];
    const points: [number, number][] = [[0, 0]];
    for (const [e, T] of rises) {
      strain += e;
      tension += T;
      points.push([strain, tension]);
    }
    return points;
  });

describe("the slow-pull curve", () => {
  it("is the same in the engine and in the rig package, on the curve and beyond its end", () => {
    fc.assert(
      fc.property(curves, fc.double({ min: 0, max: 1.5, noNaN: true }), (curve, share) => {
        const strain = share * curve.at(-1)![0];
        const expected = tensionAt(curve, strain);
        close(engineTension(curve, strain) - expected, 0, 1e-9 * (1 + expected), "rounding");
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  it("of every generic webbing gives the engine back the tension it was asked for", () => {
    for (const stock of GENERIC_STOCKS.values()) {
      if (!("curve" in stock)) continue;
      const curve = stock.curve as Curve;
      for (const tension of [100, 1000, 5000, 20_000]) {
        const strain = strainAt(curve, tension);
        if (strain === undefined) continue;
        close(engineTension(curve, strain), tension, 1e-9, "rounding");
      }
    }
  });
});
