/** Drawings of the wear record: strength along a webbing, labels of a calendar, the loaded span. */
import type { StrengthZone, WebbingState } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { scaleOf } from "../src/scale.ts";
import { bandLabel, shortfall, spanDimension, stayBar, strengthPath } from "../src/wear/index.ts";

const zone = (from: number, to: number, strength: number) =>
  ({ from, to, strength, strength5: 0.8 * strength }) as StrengthZone;
const placement = (from: number, to: number, markedEnd: "A" | "B" = "A") =>
  ({ from, to, markedEnd }) as NonNullable<WebbingState["placement"]>;
/** Ten pixels to the metre, from 100 px on; a pixel to 100 N, upwards from 300 px. */
const x = scaleOf(0, 80, 100, 900);
const y = scaleOf(0, 30_000, 300, 0);

describe("strength along a webbing", () => {
  it("is a step at every zone, at its strength", () => {
    const zones = [zone(0, 20, 20_000), zone(20, 80, 10_000)];
    expect(strengthPath(zones, "strength", x, y)).toBe("M100.0 100.0H300.0L300.0 200.0H900.0");
    expect(strengthPath(zones, "strength5", x, y)).toBe("M100.0 140.0H300.0L300.0 220.0H900.0");
  });

  it("shows a mark of a few millimetres as wide as one can see, where it is", () => {
    expect(strengthPath([zone(40, 40.1, 10_000)], "strength", x, y)).toBe("M499.0 200.0H502.0");
  });

  it("below the required one is marked up to the required one, and only where the webbing is loaded", () => {
    const weak = zone(10, 30, 10_000);
    expect(shortfall(weak, 9_000, placement(20, 70), x, y)).toEqual({ x: 300, y: 210, width: 100, height: 10 });
    expect(shortfall(weak, 8_000, placement(20, 70), x, y)).toBeUndefined();
    expect(shortfall(weak, 9_000, undefined, x, y)).toBeUndefined();
  });
});

describe("a calendar", () => {
  const days = scaleOf(0, 1000, 0, 1000);

  it("has a bar for every time that something hung, up to today where it hangs still", () => {
    expect(stayBar({ from: 100, to: 300, label: "Long gap" }, days, 700)).toMatchObject({ left: 100, width: 200 });
    expect(stayBar({ from: 100, to: undefined, label: "Long gap" }, days, 700)).toMatchObject({
      left: 100,
      width: 600,
    });
    expect(stayBar({ from: 900, to: undefined, label: "Long gap" }, days, 700).width).toBe(2);
  });

  it("writes a label in full, cut short, or not at all, as the bar has room", () => {
    const label = (to: number) => stayBar({ from: 0, to, label: "The long gap" }, days, 0).label;
    expect(label(200)).toBe("The long gap");
    expect(label(65)).toBe("The lon…");
    expect(label(40)).toBeUndefined();
  });

  it("writes the take-down date behind its day, before it at the edge, and never over the past", () => {
    const words = "take down by 4 July";
    expect(bandLabel(500, words, days, 300, 1000)).toEqual({ at: 500, before: false, fits: true });
    expect(bandLabel(950, words, days, 300, 1000)).toEqual({ at: 950, before: true, fits: true });
    expect(bandLabel(950, words, days, 900, 1000).fits).toBe(false);
    expect(bandLabel(5000, words, days, 300, 1000).at).toBe(1000);
  });
});

describe("the loaded span", () => {
  const told = (one: NonNullable<WebbingState["placement"]>) =>
    spanDimension(one, x, 20).texts.map(({ anchor, words }) => `${anchor}: ${words}`);

  it("is measured from anchor to anchor, in the order in which they lie along the webbing", () => {
    const [ahead] = told(placement(10, 70));
    const [turned] = told(placement(10, 70, "B"));
    expect(ahead).toContain("60");
    expect(turned).not.toBe(ahead);
    expect(spanDimension(placement(10, 70), x, 20).path).toMatch(/^M200 20H/);
  });

  it("of which an end is out of sight names it at that edge, without a tip there", () => {
    const sight = scaleOf(20, 60, 100, 900);
    const { path, texts } = spanDimension(placement(10, 50), sight, 20);
    expect(texts.map(({ anchor }) => anchor)).toEqual(["middle", "start"]);
    expect(path!.match(/v10/g)).toHaveLength(1);
  });

  it("out of sight altogether is told at the side on which it lies", () => {
    const sight = scaleOf(70, 80, 100, 900);
    expect(spanDimension(placement(10, 50), sight, 20)).toMatchObject({
      path: undefined,
      texts: [{ x: 100, anchor: "start", words: expect.stringContaining("◂") }],
    });
  });

  it("leaves its words out where they would not fit between its tips", () => {
    expect(told(placement(40, 42))).toEqual([]);
  });
});
