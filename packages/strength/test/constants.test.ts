import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { boltDirectionFactors } from "../src/derating/boltDirection.ts";
import { constantsMarkdown } from "../src/derating/constants.ts";
import { abrasionFactor, cutFactor } from "../src/derating/damage.ts";
import type { StrengthFactor } from "../src/derating/factor.ts";
import { boltPlacement } from "../src/derating/make.ts";
import { riggedFactors } from "../src/derating/rigged.ts";
import { heatFactor, sheathSlipFactor } from "../src/derating/rope.ts";
import { sewnLoopAgeing } from "../src/derating/sewing.ts";
import {
  ageFactor,
  bendFactor,
  CONSTANTS,
  type ConstantStatus,
  clampFactor,
  fallsFactor,
  monthDose,
  ropeKnot,
  sewingFactor,
  sunFactor,
  usedMetal,
  webbingKnot,
  wetFactor,
} from "../src/index.ts";

/**
 * The constants once more, on purpose apart from the table: a slip there is seen here. Who changes a number changes it in both places, and
 * knows from the third column which direction is the unsafe one.
 */
const PINNED: readonly (readonly [string, number, "higher" | "lower", ConstantStatus])[] = [
  ["beyond.share", 0.5, "higher", "assumed"],
  ["beyond.spread", 0.3, "lower", "assumed"],
  ["unknown.value", 0.7, "higher", "assumed"],
  ["unknown.spread", 0.2, "lower", "assumed"],
  ["unknown.age", 50, "lower", "assumed"],
  ["make.textile.spread", 0.05, "lower", "assumed"],
  ["make.textile.shared", 0.7, "lower", "assumed"],
  ["make.metal.value", 0.95, "higher", "assumed"],
  ["make.metal.spread", 0.05, "lower", "assumed"],
  ["bolt.placement.value", 0.85, "higher", "assumed"],
  ["bolt.placement.spread", 0.2, "lower", "assumed"],
  ["bolt.axial", 15, "higher", "published"],
  ["bolt.radial", 25, "lower", "published"],
  ["bolt.direction.spread", 0.1, "lower", "assumed"],
  ["sun.polyester.loss", 0.3, "lower", "seen second hand"],
  ["sun.polyester.years", 0.4, "higher", "assumed"],
  ["sun.polyester.to", 36, "higher", "assumed"],
  ["sun.polyamide.loss", 0.55, "lower", "seen second hand"],
  ["sun.polyamide.to", 36, "higher", "seen second hand"],
  ["sun.hmpe.loss", 0.55, "lower", "assumed"],
  ["sun.hmpe.to", 24, "higher", "assumed"],
  ["sun.aramid.loss", 0.6, "lower", "assumed"],
  ["sun.aramid.years", 0.5, "higher", "assumed"],
  ["sun.aramid.to", 12, "higher", "assumed"],
  ["sun.spreadPerLoss", 0.6, "lower", "assumed"],
  ["sun.shared", 0.8, "lower", "assumed"],
  ["dose.january", 0.4, "lower", "assumed"],
  ["dose.february", 0.6, "lower", "assumed"],
  ["dose.march", 0.9, "lower", "assumed"],
  ["dose.april", 1.2, "lower", "assumed"],
  ["dose.may", 1.5, "lower", "assumed"],
  ["dose.june", 1.65, "lower", "assumed"],
  ["dose.july", 1.65, "lower", "assumed"],
  ["dose.august", 1.45, "lower", "assumed"],
  ["dose.september", 1.1, "lower", "assumed"],
  ["dose.october", 0.75, "lower", "assumed"],
  ["dose.november", 0.45, "lower", "assumed"],
  ["dose.december", 0.35, "lower", "assumed"],
  ["dose.lowLatitude", 1.3, "lower", "assumed"],
  ["dose.middleLatitude", 1, "lower", "assumed"],
  ["dose.highLatitude", 0.8, "lower", "assumed"],
  ["wet.polyamide.value", 0.85, "higher", "published"],
  ["wet.polyamide.spread", 0.04, "lower", "assumed"],
  ["wet.polyester.value", 1, "higher", "published"],
  ["wet.polyester.spread", 0.02, "lower", "assumed"],
  ["wet.hmpe.value", 1, "higher", "from memory"],
  ["wet.hmpe.spread", 0.03, "lower", "assumed"],
  ["wet.aramid.value", 0.92, "higher", "published"],
  ["wet.aramid.spread", 0.04, "lower", "assumed"],
  ["age.lossPerYear", 0.01, "lower", "assumed"],
  ["age.spreadPerYear", 0.005, "lower", "assumed"],
  ["age.to", 10, "higher", "assumed"],
  ["age.shared", 0.8, "lower", "assumed"],
  ["falls.loss", 0.25, "lower", "assumed"],
  ["falls.count", 100, "higher", "assumed"],
  ["falls.spreadPerLoss", 0.5, "lower", "assumed"],
  ["falls.to", 400, "higher", "assumed"],
  ["falls.shared", 0.6, "lower", "assumed"],
  ["clamp.first", 0.05, "lower", "assumed"],
  ["clamp.loss", 0.4, "lower", "assumed"],
  ["clamp.months", 4, "higher", "assumed"],
  ["clamp.usualLoad", 0.1, "higher", "assumed"],
  ["clamp.leastScale", 0.8, "lower", "assumed"],
  ["clamp.mostScale", 1.4, "lower", "assumed"],
  ["clamp.spreadPerLoss", 0.35, "lower", "assumed"],
  ["clamp.to", 24, "higher", "assumed"],
  ["clamp.shared", 0.6, "lower", "assumed"],
  ["sewing.asSewn", 0.8, "higher", "assumed"],
  ["sewing.loss", 0.25, "lower", "assumed"],
  ["sewing.months", 6, "higher", "assumed"],
  ["sewing.spread", 0.1, "lower", "assumed"],
  ["sewing.spreadPerLoss", 0.3, "lower", "assumed"],
  ["sewing.to", 36, "higher", "assumed"],
  ["sewing.shared", 0.5, "lower", "assumed"],
  ["abrasion.lossPerDepth", 1, "lower", "assumed"],
  ["cut.lossPerDepth", 1.5, "lower", "assumed"],
  ["damage.spreadPerDepth", 0.4, "lower", "assumed"],
  ["damage.to", 0.4, "higher", "assumed"],
  ["heat.lossPerShare", 1, "lower", "assumed"],
  ["heat.spreadPerShare", 0.5, "lower", "assumed"],
  ["heat.to", 0.3, "higher", "assumed"],
  ["slip.lossPerShare", 4, "lower", "assumed"],
  ["slip.spreadPerShare", 2, "lower", "assumed"],
  ["slip.to", 0.05, "higher", "assumed"],
  ["bend.atOne", 0.5, "higher", "from memory"],
  ["bend.full", 8, "lower", "from memory"],
  ["bend.spread", 0.02, "lower", "assumed"],
  ["bend.spreadPerLoss", 0.2, "lower", "assumed"],
  ["bend.shared", 0.5, "lower", "assumed"],
  ["knot.figureEight.value", 0.61, "higher", "from memory"],
  ["knot.figureEight.spread", 0.1, "lower", "assumed"],
  ["knot.barrel.value", 0.618, "higher", "published"],
  ["knot.barrel.spread", 0.1, "lower", "assumed"],
  ["knot.bowline.value", 0.55, "higher", "from memory"],
  ["knot.bowline.spread", 0.1, "lower", "assumed"],
  ["knot.overhand.value", 0.58, "higher", "from memory"],
  ["knot.overhand.spread", 0.12, "lower", "assumed"],
  ["knot.butterfly.value", 0.61, "higher", "from memory"],
  ["knot.butterfly.spread", 0.1, "lower", "assumed"],
  ["knot.doubleFisherman.value", 0.6, "higher", "assumed"],
  ["knot.doubleFisherman.spread", 0.12, "lower", "assumed"],
  ["knot.waterKnot.value", 0.5, "higher", "assumed"],
  ["knot.waterKnot.spread", 0.2, "lower", "assumed"],
  ["knot.unknown.value", 0.5, "higher", "assumed"],
  ["knot.unknown.spread", 0.2, "lower", "assumed"],
  ["knot.webbing.value", 0.375, "higher", "seen second hand"],
  ["knot.webbing.spread", 0.25, "lower", "assumed"],
  ["knot.shared", 0.5, "lower", "assumed"],
  ["rigged.choked.value", 0.8, "higher", "from memory"],
  ["rigged.basket.value", 1.4, "higher", "from memory"],
  ["rigged.spread", 0.1, "lower", "assumed"],
  ["own.spreadPerChange", 0.5, "lower", "assumed"],
  ["own.leastSpread", 0.05, "lower", "assumed"],
  ["own.mostSpread", 0.3, "lower", "assumed"],
  ["place.weblockMark", 0.15, "lower", "assumed"],
  ["place.cutReach", 0.025, "lower", "assumed"],
  ["place.joinReach", 0.15, "lower", "assumed"],
  ["place.weblockBehind", 0.3, "lower", "assumed"],
  ["place.loopBehind", 0.5, "lower", "assumed"],
  ["place.knotBehind", 1, "lower", "assumed"],
  ["place.knotInside", 0.3, "lower", "assumed"],
  ["reading.tension", 0.1, "higher", "assumed"],
  ["reading.sag", 0.1, "higher", "assumed"],
];

describe("the constants of derating", () => {
  it.each(PINNED)("%s is %d, unsafe if %s, and known as %s", (key, value, unsafe, status) => {
    const found = CONSTANTS.get(key as never);
    expect(found, `${key} is gone`).toBeDefined();
    const way = found!.value === value ? "as pinned" : found!.value > value ? "higher" : "lower";
    expect(way, way === unsafe ? `${key} moved to the UNSAFE side` : `${key} moved`).toBe("as pinned");
    expect([found!.unsafe, found!.status]).toEqual([unsafe, status]);
  });

  it("are all pinned", () => {
    expect([...CONSTANTS.keys()]).toEqual(PINNED.map(([key]) => key));
  });

  it("stand in DERATING.md as they are (npm run derating -w packages/strength writes it)", () => {
    const page = readFileSync(new URL("../DERATING.md", import.meta.url), "utf8");
    const [, table] = /<!-- constants: start -->\n\n([\s\S]*?)\n\n<!-- constants: end -->/.exec(page)!;
    expect(table).toBe(constantsMarkdown());
    for (const [key, value, unsafe, status] of PINNED) {
      const row = page.split("\n").find((line) => line.startsWith(`| \`${key}\` `))!;
      const [, , number, direction, known] = row.split("|").map((cell) => cell.trim());
      expect([Number.parseFloat(number!), direction, known], row).toEqual([value, unsafe, status]);
    }
  });

  it("are called published only where a source is named", () => {
    for (const [key, { status, meaning }] of CONSTANTS) {
      if (status === "published") expect(meaning, key).toMatch(/EN 959|UFC 4-159-03|Orear|Symmetry/);
    }
  });
});

/** The formulas with these constants, worked out by hand: value and spread. */
const VALUES: readonly (readonly [string, StrengthFactor, number, number])[] = [
  ["age, 5 years", ageFactor(5), 0.95, 0.025],
  ["falls, 100 on webbing", fallsFactor(100, "webbing"), 1 - 0.25 * (1 - Math.exp(-1)), 0.125 * (1 - Math.exp(-1))],
  ["falls, 400 on a leash", fallsFactor(400, "leash"), 1 - 0.25 * (1 - Math.exp(-4)), 0.125 * (1 - Math.exp(-4))],
  ["falls beyond the range", fallsFactor(401, "leash"), 0.5 * (1 - 0.25 * (1 - Math.exp(-4))), 0.3],
  [
    "sun, polyester, 12 months",
    sunFactor("polyester", 12),
    1 - 0.3 * (1 - Math.exp(-2.5)),
    0.18 * (1 - Math.exp(-2.5)),
  ],
  ["sun, polyamide, 18 months", sunFactor("polyamide", 18), 0.725, 0.165],
  ["sun, HMPE, 18 months", sunFactor("hmpe", 18), 0.725, 0.165],
  ["sun, HMPE, beyond the range", sunFactor("hmpe", 25), 0.5 * (1 - (0.55 * 24) / 36), 0.3],
  ["sun, aramid, 6 months", sunFactor("aramid", 6), 1 - 0.6 * (1 - Math.exp(-1)), 0.36 * (1 - Math.exp(-1))],
  ["clamp, new", clampFactor(0), 0.95, 0.0175],
  ["clamp, 4 months", clampFactor(4), 0.95 - 0.4 * (1 - Math.exp(-1)), 0.35 * (0.05 + 0.4 * (1 - Math.exp(-1)))],
  ["clamp, new, heavy load", clampFactor(0, 0.5), 1 - 1.4 * 0.05, 0.35 * 1.4 * 0.05],
  ["clamp, new, light load", clampFactor(0, 0), 1 - 0.8 * 0.05, 0.35 * 0.8 * 0.05],
  ["sewing, new", sewingFactor(0), 0.8, 0.1],
  ["sewing, 6 months", sewingFactor(6), 0.8 - 0.25 * (1 - Math.exp(-1)), 0.1 + (0.3 * 0.25 * (1 - Math.exp(-1))) / 0.8],
  ["sewn loop, new", sewnLoopAgeing(0), 1, 0.1],
  ["abrasion of a fifth", abrasionFactor(0.2), 0.8, 0.08],
  ["cut of a fifth", cutFactor(0.2), 0.7, 0.08],
  ["glazed over a tenth", heatFactor(0.1), 0.9, 0.05],
  ["sheath slipped by 2 %", sheathSlipFactor(0.02), 0.92, 0.04],
  ["bend, pin as thick as the webbing", bendFactor(1), 0.5, 0.12],
  ["bend, twice", bendFactor(2), 0.5 + 0.5 / 3, 0.02 + 0.2 * (0.5 - 0.5 / 3)],
  ["wet polyamide", wetFactor("polyamide"), 0.85, 0.04],
  ["figure-eight", ropeKnot("figureEight"), 0.61, 0.1],
  ["knot in webbing", webbingKnot(), 0.375, 0.25],
  ["bolt", boltPlacement(), 0.85, 0.2],
  ["metal", usedMetal(), 0.95, 0.05],
  ["choked sling", riggedFactors("choked", "")[0]!, 0.8, 0.1],
  ["basket", riggedFactors("basket", "")[0]!, 1.4, 0.1],
  ["bolt pulled along its axis", boltDirectionFactors(0, "")[0]!, 0.6, 0.1],
  ["bolt pulled at 45°", boltDirectionFactors(Math.PI / 4, "")[0]!, Math.SQRT2 / (25 / 15 + 1), 0.1],
  ["bolt, direction unknown", boltDirectionFactors(undefined, "")[0]!, 1 / Math.hypot(25 / 15, 1), 0.1],
];

it.each(VALUES)("%s: value and spread are those of the written formula", (_, factor, value, spread) => {
  expect(factor.value).toBeCloseTo(value, 12);
  expect(factor.spread).toBeCloseTo(spread, 12);
});

it("a year of sun weighs twelve months, more at a low latitude, less at a high one", () => {
  const year = (latitude: "low" | "middle" | "high") =>
    Array.from({ length: 12 }, (_, i) => monthDose(i + 1, 1, latitude, "north")).reduce((a, b) => a + b);
  expect([year("low"), year("middle"), year("high")].map((dose) => dose.toFixed(9))).toEqual([
    "15.600000000",
    "12.000000000",
    "9.600000000",
  ]);
});
