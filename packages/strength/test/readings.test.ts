import type { LineStock, Rig } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import type { LineReading } from "../src/wear/readings/lineReading.ts";
import { standing } from "../src/wear/readings/lineStatics.ts";
import { readingAgainstRig, rigAsRead } from "../src/wear/readings/readingAgainstRig.ts";
import { tensionDrift } from "../src/wear/readings/tensionDrift.ts";
import { exampleRig, polyesterWebbing, section } from "./exampleRig.ts";

const GRAVITY = 9.80665;

/** A line of EA 60 kN, `mass` per natural metre, alone between level anchors. */
function lineOf(span: number, mass: number, given: Partial<Rig> = {}): Rig {
  const stock: LineStock = {
    ...polyesterWebbing,
    mass,
    curve: [
      [0, 0],
      [1, 60_000],
    ],
  };
  const { backup: _backup, ...rig } = exampleRig({ span, ...given });
  return { ...rig, main: { ...rig.main, pretension: 2000, sections: [section({ stock })] } };
}
const under = (force: number, at = 0.5) => ({ walker: force / GRAVITY, at });

describe("statics of a walker standing on a line", () => {
  // Two straight halves without weight, T = EA (2 √((l/2)² + d²)/L₀ − 1), P = 2 T d / √…: values to nine digits from that formula.
  it.each([
    [100, 7.50537886, 2694.609836],
    [20, 1.50107577, 2694.609836],
  ])("a weightless line of %d m sags %d m and carries %d N", (span, sag, tension) => {
    const found = standing(lineOf(span, 1e-12), 2000, under(800))!;
    expect(found.sag).toBeCloseTo(sag, 7);
    expect(found.tension).toBeCloseTo(tension, 4);
  });

  // Exact elastic catenary of w = 0.6864655 N/m from 2 kN: 7.71616081 m, largest tension 2734.093920 N at the anchor. Parabolas, the mean
  // tension of a half, and a tension that is counted without the weight leave half a per cent.
  it("a heavy line sags as the exact catenary does, within half a per cent", () => {
    const found = standing(lineOf(100, 0.6864655 / GRAVITY), 2000, under(800))!;
    expect(Math.abs(found.sag / 7.71616081 - 1)).toBeLessThan(0.005);
    expect(Math.abs(found.tension / 2734.09392 - 1)).toBeLessThan(0.015);
  });

  it("mirrored, it sags the same", () => {
    const rig = lineOf(80, 0.06, { rise: 4 });
    const mirrored = lineOf(80, 0.06, { rise: -4 });
    const [a, b] = [standing(rig, 2500, under(700, 0.3))!, standing(mirrored, 2500, under(700, 0.7))!];
    expect(a.sag).toBeCloseTo(b.sag, 9);
    expect(a.tension).toBeCloseTo(b.tension, 6);
  });
});

describe("a reading against a rig", () => {
  const rig = lineOf(100, 0.06);
  const sagOf = (tension: number, at = 0.5): LineReading => ({
    kind: "sag",
    on: "2026-06-01",
    walker: 80,
    at,
    sag: standing(rig, tension, { walker: 80, at })!.sag,
  });

  it.each([
    [800, 0.5],
    [2000, 0.5],
    [2000, 0.2],
    [6000, 0.5],
  ])("of the sag that %d N gives at %d comes to that tension", (tension, at) => {
    expect(readingAgainstRig(rig, sagOf(tension, at)).pretension).toBeCloseTo(tension, 3);
  });

  it("of a tension under a walker is turned around too; with nobody on the line it is the tension", () => {
    const { tension } = standing(rig, 2000, { walker: 80, at: 0.5 })!;
    expect(readingAgainstRig(rig, { kind: "tension", tension, walker: 80 }).pretension).toBeCloseTo(2000, 3);
    expect(readingAgainstRig(rig, { kind: "tension", tension: 2100 })).toMatchObject({
      pretension: 2100,
      agrees: true,
    });
  });

  it("that lies outside of its range does not agree, and says by how much", () => {
    const low = readingAgainstRig(rig, sagOf(1200));
    expect(low).toMatchObject({ agrees: false, stated: 2000, difference: expect.closeTo(-0.4, 4) });
    expect(low.message).toMatchObject({ code: "reading.lessOn", values: { stated: { force: 2000 } } });
    expect(readingAgainstRig(rig, { ...sagOf(1200), within: 5 } as LineReading).agrees).toBe(true);
    expect(rigAsRead(rig, sagOf(1200)).main.pretension).toBeCloseTo(1200, 3);
  });

  it("and the one before it show the drift", () => {
    const readings = [
      { ...sagOf(1700), on: "2026-08-01" },
      { ...sagOf(2000), on: "2026-06-01" },
    ];
    expect(tensionDrift(rig, readings)).toMatchObject({
      change: expect.closeTo(-0.15, 4),
      months: expect.closeTo(2, 1),
    });
    expect(tensionDrift(rig, readings.slice(1))).toBeUndefined();
  });
});
