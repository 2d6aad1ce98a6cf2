/** What the drawings of record and log rest on: what is read off along a webbing, and the tests of a group as dots. */
import { type BreakTest, type StrengthZone, wearState } from "@secondline/strength";
import { describe, expect, test } from "vitest";
import {
  alongCaption,
  dotsOf,
  dotsTold,
  loadedZones,
  readOff,
  type WebbingFacts,
  weakest,
} from "../src/record/index.ts";

const zone = (from: number, to: number, strength5: number) =>
  ({ from, to, strength5, strength: strength5 / 0.8, reason: "webbing", basis: [], parts: [], factors: [] }) as never;
const zones: readonly StrengthZone[] = [zone(0, 10, 8000), zone(10, 12, 5000), zone(12, 60, 9000)];
const factsIn = (placement: { from: number; to: number } | undefined) =>
  ({ zones, state: { placement } }) as unknown as WebbingFacts;

describe("strength along a webbing", () => {
  test("counts where the webbing is loaded, and everywhere where it hangs nowhere", () => {
    expect(weakest(loadedZones(factsIn(undefined)))?.strength5).toBe(5000);
    expect(weakest(loadedZones(factsIn({ from: 20, to: 50 })))?.strength5).toBe(9000);
  });

  test("is read off at the weakest place until the line is moved", () => {
    expect(readOff(zones, { from: 0, to: 60 }, zones[1], undefined)).toMatchObject({ place: 11, here: zones[1] });
    expect(readOff(zones, { from: 0, to: 60 }, zones[1], 3)).toMatchObject({ place: 3, here: zones[0] });
  });

  test("is read off in the middle where the weakest place is out of sight, and never out of sight", () => {
    const sight = { from: 30, to: 50 };
    expect(readOff(zones, sight, zones[1], undefined)).toMatchObject({ place: 40, min: 30, max: 50 });
    expect(readOff(zones, sight, zones[1], 2)?.place).toBe(30);
  });

  test("at the border of two zones is that of the weaker one", () => {
    expect(readOff(zones, { from: 0, to: 60 }, undefined, 12)?.here.strength5).toBe(5000);
    expect(readOff(zones, { from: 0, to: 60 }, undefined, 10)?.here.strength5).toBe(5000);
  });

  test("cannot be read off a webbing of unknown material, and the caption says so", () => {
    expect(readOff([], { from: 0, to: 60 }, undefined, undefined)).toBeUndefined();
    const { webbings } = wearState(
      { name: "one", webbings: [{ id: "w", name: "w", length: 60, mark: "", entries: [] }], parts: [] } as never,
      "2026-06-01",
    );
    const unknown = { state: webbings[0]!, stock: undefined, fromRig: false, zones: [], needed: undefined };
    expect(alongCaption(unknown)).toMatch(/made of/);
  });
});

describe("tests of a group as dots", () => {
  const pulled = (load: number, failureMode: string, more: Partial<BreakTest> = {}): BreakTest =>
    ({ result: { kind: "exact", value: load }, outcome: "broke", failureMode, ...more }) as BreakTest;
  const tests = [
    pulled(20_000, "in the span"),
    pulled(18_000, "in the span", { batch: "7" }),
    pulled(15_000, "at the clamp"),
  ];

  test("stand in a row for each way of failing, each at its load", () => {
    expect(dotsOf(tests, undefined).map(({ name, dots }) => [name, dots.map(({ load }) => load)])).toEqual([
      ["in the span", [20_000, 18_000]],
      ["at the clamp", [15_000]],
    ]);
  });

  test("say their batch, and all together how many they are and between which loads", () => {
    const modes = dotsOf(tests, undefined);
    expect(modes[0]!.dots[1]!.title).toContain("7");
    const told = dotsTold(modes);
    expect(told).toContain("3");
    expect(told).toContain("15");
    expect(told).toContain("in the span: 2; at the clamp: 1");
  });
});
