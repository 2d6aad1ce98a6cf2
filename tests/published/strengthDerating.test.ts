import { GENERIC_STOCKS, type KnotKind, type WebbingSection } from "@secondline/rig";
import {
  ageFactor,
  bendFactor,
  clampFactor,
  combineFactors,
  fallsFactor,
  monthDose,
  ropeKnot,
  sewingFactor,
  sunFactor,
  usedMetal,
  webbingKnot,
  webbingStrength,
  wetFactor,
  zoneAt,
} from "@secondline/strength";
import { tellNote } from "@secondline/words/notes";
import { describe, expect, it } from "vitest";

const within = (value: number, [low, high]: readonly [number, number]) => {
  expect(value).toBeGreaterThanOrEqual(low);
  expect(value).toBeLessThanOrEqual(high);
};

describe("knots in rope", () => {
  const HSE = "HSE Contract Research Report 364/2001, ch. 3 (numbers from memory)";
  it.each<[KnotKind, string, readonly [number, number]]>([
    ["figureEight", `double figure-of-eight on a bight 61 to 77 %, ${HSE}`, [0.61, 0.77]],
    ["bowline", `bowline 55 to 74 %, ${HSE}`, [0.55, 0.74]],
    ["overhand", `overhand 58 to 68 %, ${HSE}`, [0.58, 0.68]],
    ["butterfly", `alpine butterfly 61 to 72 %, ${HSE}`, [0.61, 0.72]],
  ])("%s: %s", (kind, _, range) => within(ropeKnot(kind).value, range));

  it("barrel: mean of 90 breaks 61.82 %, P. I. Sáez et al., Symmetry 16 (2024) 167", () => {
    expect(ropeKnot("barrel").value).toBeCloseTo(0.6182, 3);
    expect(ropeKnot("barrel").basis.kind).toBe("published");
  });

  it("no knot is taken for more than a careful default of 0.50 (unknown) to about 0.60, never for 0.80", () => {
    const kinds = [
      "figureEight",
      "barrel",
      "bowline",
      "overhand",
      "butterfly",
      "doubleFisherman",
      "waterKnot",
    ] as const;
    for (const kind of kinds) within(ropeKnot(kind).value, [0.5, 0.65]);
    expect(ropeKnot("unknown").value).toBe(0.5);
  });

  it("flat webbing loses at least half, down to a quarter left: Austrian slackline association, own pull tests (second hand, without title and year)", () => {
    const knot = webbingKnot();
    within(knot.value, [0.25, 0.5]);
    const { strength5, strength95 } = combineFactors(1, [knot]);
    expect(strength5).toBeLessThan(0.26);
    expect(strength95).toBeGreaterThan(0.5);
  });
});

describe("sun", () => {
  it("polyester: most of the loss in 12 months, levelling off near 30 %, WSTDA-UV-Sling-2003 (seen in reproductions)", () => {
    const loss = (months: number) => 1 - sunFactor("polyester", months).value;
    expect(loss(12)).toBeGreaterThan(0.8 * loss(36));
    within(loss(36), [0.28, 0.32]);
  });

  it("polyamide: 50 to 60 % lost after 36 months in some samples, WSTDA-UV-Sling-2003 (seen in reproductions)", () => {
    within(1 - sunFactor("polyamide", 36).value, [0.5, 0.6]);
  });

  it("synthetic slings: up to 40 % lost in 16 months (Lift & Access, quoting WSTDA) is not below the 5 % value", () => {
    for (const fibre of ["polyester", "polyamide"] as const) {
      expect(combineFactors(1, [sunFactor(fibre, 16)]).strength5).toBeLessThan(0.6);
    }
  });

  it("says that the curves are assumptions, and does not go beyond their range", () => {
    expect(sunFactor("polyester", 12).basis.kind).toBe("assumed");
    const beyond = sunFactor("polyamide", 48);
    expect(beyond.beyond).toBe(true);
    expect(beyond.value).toBeLessThan(0.5 * 0.46);
    expect(tellNote(beyond.basis.note)).toContain("48 months is outside 0 to 36 months");
  });
});

describe("wet", () => {
  it("polyamide: −15 % for wet rope, UFC 4-159-03, Table 6-8; −10 to −15 % for yarn, Tension Technology International", () => {
    expect(wetFactor("polyamide").value).toBe(0.85);
    within(wetFactor("polyamide").value, [0.85, 0.9]);
  });
  it("polyester: no loss, the same two sources", () => {
    expect(wetFactor("polyester").value).toBe(1);
  });
  it("aramid fabric: −3 to −13 %, L. Orear, ribbon parachute fabrics", () => {
    within(1 - wetFactor("aramid").value, [0.03, 0.13]);
  });
});

it("bend over a pin: full strength from D/d = 8, about half at 1, Cordage Institute rule (from memory)", () => {
  expect(bendFactor(8).value).toBeCloseTo(1, 12);
  expect(bendFactor(1).value).toBeCloseTo(0.5, 12);
  expect(bendFactor(0.5).beyond).toBe(true);
});

/**
 * Durations, lengths and parts of our own; common practice, no source: these bounds only guard against results that no
 * rigger would believe. Shares of the rated strength.
 */
describe("orders of magnitude (common practice, no source): the 5 % to 95 % band lies in wide bounds", () => {
  const stock = GENERIC_STOCKS.get("polyester-webbing-25")!;
  const months = [3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
  const sunMonths = months.reduce((sum, month) => sum + monthDose(month, 0.7, "middle", "north"), 0);
  const section: WebbingSection = {
    stock,
    condition: { ageYears: 2, monthsOutside: 10, sunMonths },
    wear: [
      { kind: "clampMark", at: 8, length: 0.25, months: 10 },
      { kind: "stitching", at: 19, length: 0.3 },
      { kind: "fallZone", from: 31, to: 47, falls: 60 },
    ],
  };
  const zones = webbingStrength([section], 84);
  const bandAt = (at: number) => {
    const { rated, factors } = zoneAt(zones, at);
    const { strength5, strength95, sigmaLog } = combineFactors(rated, factors);
    return { low: strength5 / rated, high: strength95 / rated, sigmaLog };
  };
  const inside = ({ low, high }: { low: number; high: number }, [least, most]: readonly [number, number]) => {
    expect(low).toBeGreaterThan(least);
    expect(high).toBeLessThan(most);
  };

  it("a fall zone after ten months keeps between a quarter and nine tenths", () => inside(bandAt(40), [0.25, 0.9]));
  it("a sewn join after ten months keeps between a sixth and three quarters", () => inside(bandAt(19), [0.16, 0.75]));
  it("a place ten months in a clamp keeps between a sixth and three quarters", () => inside(bandAt(8), [0.16, 0.75]));
  it("clamp and stitching rank below the fall zone, the fall zone below the rest", () => {
    const [clamp, stitching, falls, rest] = [8, 19, 40, 70].map((at) => zoneAt(zones, at).strength);
    expect(Math.max(clamp!, stitching!)).toBeLessThan(falls!);
    expect(falls).toBeLessThan(rest!);
  });
  it("no band is so wide that it would hold anything", () => {
    for (const at of [8, 19, 40]) expect(bandAt(at).sigmaLog).toBeLessThan(0.25);
  });

  it("an old knotted leash of rope keeps between a fifth and two thirds", () => {
    const rope = GENERIC_STOCKS.get("low-stretch-rope-11")!;
    const factors = [
      sunFactor("polyamide", 0.5 * 24),
      ageFactor(3),
      fallsFactor(120, "leash"),
      ropeKnot("figureEight"),
    ];
    const { strength5, strength95 } = combineFactors(rope.rated.strength, factors);
    inside({ low: strength5 / rope.rated.strength, high: strength95 / rope.rated.strength }, [0.2, 0.67]);
  });

  it("used metal keeps nearly all of its rating", () => {
    const { strength5, strength95 } = combineFactors(1, [usedMetal()]);
    inside({ low: strength5, high: strength95 }, [0.75, 1.1]);
  });
});

describe("every factor", () => {
  const all = [
    ropeKnot("figureEight"),
    webbingKnot(),
    sunFactor("aramid", 6),
    wetFactor("hmpe"),
    fallsFactor(50, "webbing"),
    clampFactor(6),
    sewingFactor(6),
    bendFactor(3),
    ageFactor(4),
  ];
  it.each(all.map((factor) => [factor.name, factor] as const))(
    "%s has a basis, a spread and a value below one",
    (_, factor) => {
      expect(tellNote(factor.basis.note).length).toBeGreaterThan(10);
      expect(factor.value).toBeLessThanOrEqual(1);
      expect(factor.spread).toBeGreaterThan(0);
      expect(factor.beyond).toBe(false);
    },
  );

  it("takes more the longer it works", () => {
    for (const series of [
      [1, 6, 20].map((m) => clampFactor(m).value),
      [1, 6, 20].map((m) => sewingFactor(m).value),
      [1, 50, 300].map((n) => fallsFactor(n, "webbing").value),
      [1, 6, 11].map((m) => sunFactor("hmpe", m).value),
    ]) {
      expect(series).toEqual([...series].sort((a, b) => b - a));
    }
  });
});
