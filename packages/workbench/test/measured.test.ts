/** Span, rise and the angle of legs from what can be measured on site, against triangles whose sides are whole numbers. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LegField, type MeasuredTexts, type MeasuredWay, readLegs, readMeasured } from "../src/index.ts";

const placed = (way: MeasuredWay, texts: MeasuredTexts) => {
  const read = readMeasured(way, texts);
  if (!read.ok) throw new Error(read.faults.map(({ kind, at }) => `${at} ${kind}`).join(", "));
  return read;
};
const faults = (way: MeasuredWay, texts: MeasuredTexts) => {
  const read = readMeasured(way, texts);
  return read.ok ? [] : read.faults.map(({ kind, at }) => `${at} ${kind}`);
};

describe("span and rise", () => {
  it("come from a line of sight and its level part: 16, 63, 65", () => {
    const up = placed("level", { sight: "65 m", level: "63 m" });
    expect(up.texts).toEqual({ span: "63 m", rise: "16 m" });
    expect(placed("level", { sight: "65 m", level: "63 m", side: "lower" }).texts.rise).toBe("-16 m");
    // Feet are read as feet.
    expect(placed("level", { sight: "65 ft", level: "63 ft" }).placed.rise).toBeCloseTo(16 * 0.3048, 9);
  });

  it("come from a line of sight and its angle: half of it at thirty degrees, and none of it level", () => {
    const { placed: at } = placed("angle", { sight: "60 m", angle: "30 deg" });
    expect([at.span, at.rise]).toEqual([expect.closeTo(60 * Math.sqrt(0.75), 9), expect.closeTo(30, 9)]);
    expect(placed("angle", { sight: "60 m", angle: "-30 deg" }).texts.rise).toBe("-30 m");
    expect(placed("angle", { sight: "60 m", angle: "0 deg" }).texts).toEqual({ span: "60 m", rise: "0 m" });
  });

  it("come from three lengths to a mark below A: B 60 m out and 25 m up is 65 m off, and 75 m from a mark 20 m down", () => {
    expect(placed("plumb", { sight: "65 m", plumb: "20 m", mark: "75 m" }).texts).toEqual({
      span: "60 m",
      rise: "25 m",
    });
    // 48 m out and 14 m down, seen from 50 m; a mark as far down as B is level with it.
    expect(placed("plumb", { sight: "50 m", plumb: "14 m", mark: "48 m" }).texts).toEqual({
      span: "48 m",
      rise: "-14 m",
    });
  });

  it("are the same by every way, for any two anchors", () => {
    const metres = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
    fc.assert(
      fc.property(metres(5, 200), metres(-0.5, 0.5), metres(2, 60), (span, slope, plumb) => {
        const rise = slope * span;
        const sight = Math.hypot(span, rise);
        const text = (value: number, unit = "m") => `${value.toFixed(9)} ${unit}`;
        const all = [
          placed("angle", { sight: text(sight), angle: text((Math.atan2(rise, span) * 180) / Math.PI, "deg") }),
          placed("plumb", { sight: text(sight), plumb: text(plumb), mark: text(Math.hypot(span, rise + plumb)) }),
        ];
        for (const { placed: at } of all) {
          expect(at.span).toBeCloseTo(span, 4);
          expect(at.rise).toBeCloseTo(rise, 4);
        }
      }),
      { seed: 5, numRuns: 100 },
    );
  });

  it("say how far they move when what was measured is a little off", () => {
    // The differential of d sin α: half a degree of 60 m, and 0.1 m of nothing.
    const { error } = placed("angle", { sight: "60 m", angle: "0 deg" });
    expect(error.rise).toBeCloseTo(60.1 * Math.sin(Math.PI / 360), 9);
    expect(error.span).toBeCloseTo(60 - 59.9 * Math.cos(Math.PI / 360), 9);
    // Two lengths that are nearly equal say next to nothing of the rise.
    const flat = placed("level", { sight: "60 m", level: "60 m" });
    expect(flat.error.rise).toBeCloseTo(Math.sqrt(60.1 ** 2 - 59.9 ** 2), 9);
    expect(flat.doubts).toEqual(["loose"]);
    expect(placed("angle", { sight: "60 m", angle: "2 deg" }).doubts).toEqual([]);
    expect(placed("angle", { sight: "60 m", angle: "25 deg" }).doubts).toEqual(["steep"]);
    // A short plumb line leaves the triangle open when it is a little off.
    expect(placed("plumb", { sight: "60 m", plumb: "0.15 m", mark: "60 m" }).error.rise).toBeGreaterThan(50);
  });

  it("are refused at the field that is wrong, and wait for what is not typed", () => {
    expect(faults("level", { sight: "60 m", level: "61 m" })).toEqual(["level levelLonger"]);
    expect(faults("angle", { sight: "60", angle: "70 deg" })).toEqual(["sight unread", "angle steep"]);
    expect(faults("angle", { sight: "-60 m", angle: "2 deg" })).toEqual(["sight notPositive"]);
    expect(faults("plumb", { sight: "60 m", plumb: "10 m", mark: "80 m" })).toEqual(["mark noTriangle"]);
    expect(faults("level", { sight: "60 m", level: "59 m", side: "over" })).toEqual(["side side"]);
    expect(faults("angle", { sight: "9 km", angle: "0 deg" })).toEqual(["sight outside"]);
    expect(readMeasured("angle", { sight: "60 m" })).toEqual({ ok: false, faults: [], isWaiting: true });
  });
});

describe("the angle between two legs", () => {
  const legs = (legOne: string, legTwo: string, apart: string) => readLegs({ legOne, legTwo, apart });
  const faultOf = (...three: Parameters<typeof legs>) => {
    const read = legs(...three);
    return read.ok ? [] : read.faults.map(({ kind, at }): [string, LegField] => [kind, at]);
  };

  it("is that of the triangle, rounded up to the degree", () => {
    expect(legs("1 m", "1 m", "1 m")).toMatchObject({
      ok: true,
      text: "60 deg",
      share: expect.closeTo(1 / Math.sqrt(3), 9),
    });
    expect(legs("3 m", "4 m", "5 m")).toMatchObject({ text: "90 deg" });
    expect(legs("1.2 m", "1.2 m", "0.8 m")).toMatchObject({ text: "39 deg" });
    expect(legs("1 m", "1 m", "1.7320508 m")).toMatchObject({ text: "120 deg" });
  });

  it("is none where the lengths do not close, or the legs lie in a line", () => {
    expect(faultOf("1 m", "1 m", "2.5 m")).toEqual([["noTriangle", "apart"]]);
    expect(faultOf("2 m", "1 m", "0.5 m")).toEqual([["noTriangle", "apart"]]);
    expect(faultOf("1 m", "1 m", "2 m")).toEqual([["legsFlat", "apart"]]);
    expect(faultOf("1", "1 m", "0 m")).toEqual([
      ["unread", "legOne"],
      ["notPositive", "apart"],
    ]);
    expect(readLegs({ legOne: "1 m" })).toEqual({ ok: false, faults: [], isWaiting: true });
  });
});
