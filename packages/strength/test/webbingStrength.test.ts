import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { webbingStrength, zoneAt } from "../src/index.ts";
import { section } from "./exampleRig.ts";

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

  it("where wears overlap their factors multiply", () => {
    const wear = [
      { kind: "fallZone", from: 20, to: 30, falls: 100 },
      { kind: "abrasion", from: 25, to: 40, depth: 0.1 },
    ] as const;
    const zones = webbingStrength([section({ wear })], 60);
    const fresh = zoneAt(zones, 5).strength;
    const share = (at: number) => zoneAt(zones, at).strength / fresh;
    expect(share(27)).toBeCloseTo(share(22) * share(35), 12);
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
