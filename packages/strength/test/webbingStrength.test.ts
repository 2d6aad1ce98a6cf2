import type { Wear } from "@secondline/rig";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { webbingStrength, zoneAt } from "../src/index.ts";
import { section } from "./exampleRig.ts";

const zone = (falls: number) => ({ kind: "fallZone", from: 20, to: 30, falls }) as const;
const mark = (months: number) => ({ kind: "clampMark", at: 25, length: 0.4, months }) as const;
const worn = (depth: number) => ({ kind: "abrasion", from: 20, to: 30, depth }) as const;

describe("strength along a line", () => {
  it("a clamp mark 3 m from the end weakens just that stretch", () => {
    const zones = webbingStrength([section({ wear: [{ kind: "clampMark", at: 3, length: 0.4, months: 6 }] })], 60);
    expect(zones.map((z) => [z.from, z.to])).toEqual([
      [0, 2.8],
      [2.8, 3.2],
      [3.2, 60],
    ]);
    expect(zones[1]!.strength).toBeLessThan(0.7 * zones[0]!.strength);
    expect(zones[0]!.strength).toBe(zones[2]!.strength);
  });

  it("where wears of several kinds overlap their factors multiply", () => {
    const wear = [
      { kind: "fallZone", from: 20, to: 30, falls: 100 },
      { kind: "abrasion", from: 25, to: 40, depth: 0.1 },
    ] as const;
    const zones = webbingStrength([section({ wear })], 60);
    const fresh = zoneAt(zones, 5).strength;
    const share = (at: number) => zoneAt(zones, at).strength / fresh;
    expect(share(27)).toBeCloseTo(share(22) * share(35), 12);
  });

  it.each<readonly [string, Wear, Wear]>([
    ["falls", zone(600), zone(300)],
    ["falls within their range", zone(20), zone(10)],
    ["months in a clamp", mark(40), mark(20)],
    ["abrasion", worn(0.4), worn(0.2)],
    ["cuts", { kind: "cut", at: 25, depth: 0.5 }, { kind: "cut", at: 25, depth: 0.25 }],
    ["glazing", { kind: "heat", from: 20, to: 30, depth: 0.4 }, { kind: "heat", from: 20, to: 30, depth: 0.2 }],
  ])("of %s over the same metres two halves weaken as the whole does", (_, whole, half) => {
    const [once, twice] = [[whole], [half, half]].map((wear) => zoneAt(webbingStrength([section({ wear })], 60), 25));
    expect(twice!.strength).toBeCloseTo(once!.strength, 6);
    expect(twice!.strength5).toBeCloseTo(once!.strength5, 6);
    expect(twice!.reason).toBe(once!.reason);
    expect(twice!.factors.some(({ beyond }) => beyond)).toBe(once!.factors.some(({ beyond }) => beyond));
  });

  it("counts the heaviest load of clamp marks over the same metres, and an unknown one if there is any", () => {
    const under = (...wear: readonly Wear[]) => zoneAt(webbingStrength([section({ wear })], 60), 25);
    const [light, heavy, unknown] = [{ ...mark(5), load: 500 }, { ...mark(5), load: 6000 }, mark(5)];
    expect(under(light, heavy).strength5).toBeCloseTo(under({ ...heavy, months: 10 }).strength5, 6);
    expect(under(unknown, light).strength5).toBeCloseTo(under({ ...unknown, months: 10 }).strength5, 6);
    const named = under(light, unknown).factors.flatMap(({ blank }) => (blank === undefined ? [] : [blank.field]));
    expect(named).toEqual(["main.sections[0].wear[1].load"]);
  });

  it("neither another wear nor more of one makes any place stronger", () => {
    const place = { from: fc.constantFrom(20, 22, 24), to: fc.constantFrom(25, 28, 31) };
    const depth = fc.double({ min: 0.001, max: 0.99, noNaN: true });
    const months = fc.double({ min: 0, max: 60, noNaN: true });
    const load = fc.option(fc.double({ min: 0, max: 20_000, noNaN: true }), { nil: undefined });
    const anyWear = fc.oneof(
      fc.record({ kind: fc.constant("fallZone" as const), ...place, falls: fc.nat(700) }),
      fc.record({ kind: fc.constantFrom("abrasion" as const, "heat" as const), ...place, depth }),
      fc.record({ kind: fc.constant("cut" as const), at: fc.constantFrom(22, 24), depth }),
      fc.record({ at: fc.constantFrom(22, 24), months, load }).map(({ load, ...mark }) => ({
        kind: "clampMark" as const,
        length: 4,
        ...mark,
        ...(load === undefined ? {} : { load }),
      })),
      fc.record({ kind: fc.constant("stitching" as const), at: fc.constantFrom(22, 24), length: fc.constant(1) }),
    );
    fc.assert(
      fc.property(fc.array(anyWear, { maxLength: 5 }), anyWear, (some, more) => {
        const [before, after] = [some, [...some, more]].map((wear) => webbingStrength([section({ wear })], 60));
        for (let at = 19.9; at < 32; at += 0.1) {
          const [one, other] = [zoneAt(before!, at), zoneAt(after!, at)];
          expect(other.strength).toBeLessThanOrEqual(one.strength * (1 + 1e-9));
          expect(other.strength5).toBeLessThanOrEqual(one.strength5 * (1 + 1e-9));
        }
      }),
      { seed: 4, numRuns: 150 },
    );
  });

  it("puts a section's wear where the section lies, and takes an undescribed join as sewn", () => {
    const first = section({ length: 20 });
    const second = section({ wear: [{ kind: "cut", at: 5, depth: 0.2 }] });
    const zones = webbingStrength([first, second], 60);
    expect(zoneAt(zones, 25).reason).toBe("cut");
    expect(zoneAt(zones, 20).reason).toBe("join");
    expect(zoneAt(zones, 20).factors.some((f) => f.noData)).toBe(true);
  });

  it("covers the whole line without gap or overlap, and no wear makes it stronger", () => {
    const place = fc.double({ min: 0, max: 50, noNaN: true });
    const zoneWear = fc.record({ kind: fc.constant("fallZone" as const), from: place, falls: fc.nat(400) });
    fc.assert(
      fc.property(fc.array(zoneWear, { maxLength: 6 }), (wears) => {
        const wear = wears.map((w) => ({ ...w, to: w.from + 5 }));
        const zones = webbingStrength([section({ wear })], 60);
        expect(zones[0]!.from).toBe(0);
        expect(zones.at(-1)!.to).toBe(60);
        expect(zones.slice(1).map((z) => z.from)).toEqual(zones.slice(0, -1).map((z) => z.to));
        for (const z of zones) expect(z.strength).toBeLessThanOrEqual(30000);
      }),
      { seed: 1, numRuns: 100 },
    );
  });
});
