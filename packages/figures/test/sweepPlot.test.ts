import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import type { Governing, Knob, Swept, SweptPoint, Told } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { createSvgInk, drawPlot, frameOf, PALETTES, plotSvg } from "../src/index.ts";
import { sweepPlot } from "../src/sweep/index.ts";

const reading = readRig(readFileSync(new URL("../../../demo-data/sound-rig.json", import.meta.url), "utf8"));
if (!reading.ok) throw new Error("the demo rig is none");
const { rig } = reading;

const slack: Knob = {
  kind: "field",
  name: "backup.slack",
  path: "backup.slack",
  dimension: "share",
  from: 2,
  to: 14,
  unit: "%",
  whole: false,
};
const mass: Knob = {
  ...slack,
  name: "walker.mass",
  path: "walker.mass",
  dimension: "mass",
  from: 60,
  to: 100,
  unit: "kg",
};
const connections: Knob = { kind: "connections", name: "connections", from: 0, to: 2, unit: "", whole: true };
const governing: Governing = { event: { kind: "leashFall", at: 0.5 }, key: "fall@0.5" };
const told = (value: number): Told => ({ value, low: value - 0.05, high: value + 0.05 });
const pointAt = (values: readonly number[], value: number): SweptPoint => ({
  values,
  change: {},
  curve: { ...told(value), ...governing },
  own: { ...told(value + 0.02), ...governing },
  runs: 8,
  failed: 0,
  lost: 0,
  ground: 0,
});
const limit = { kind: "required", value: 1 } as const;
const base = { rigName: rig.name, what: { kind: "margin" }, limits: [], bad: [], events: [] } as unknown as Swept;
const curve: Swept = {
  ...base,
  knobs: [slack],
  points: [2, 8, 14].map((at) => pointAt([at], 1.3 - at / 24)),
  line: [2, 5, 8, 11, 14].map((at) => ({ at, ...told(1.3 - at / 24) })),
  limits: [{ limit, crossings: [{ limit, kept: "below", at: 7.2, low: 6, high: 8.4, governing }] }],
  kept: [{ from: 2, to: 7.2 }],
};
const map: Swept = {
  ...base,
  knobs: [slack, mass],
  points: [2, 14].flatMap((at) => [60, 100].map((kg) => pointAt([at, kg], 1.2 - at / 50))),
  region: {
    limit,
    states: ["keeps", "keeps", "open", "below"],
    outline: [60, 80, 100].map((at) => ({ at, kept: at === 100 ? [] : [{ from: 2, to: 14 - at / 10 }] })),
  },
};
const measure = (text: string) => 7 * text.length;

describe("a sweep of one number", () => {
  it("has the curve in its band, the limit across it, the crossing named and the kept stretch marked", () => {
    const plot = sweepPlot(rig, curve, ["Backup: slack"]);
    expect(plot.x).toMatchObject({ from: 2, to: 14, label: "Backup: slack [%]" });
    const [required, line] = plot.curves;
    expect(required).toMatchObject({
      points: [
        [2, 1],
        [14, 1],
      ],
      label: "what is required",
    });
    expect(line?.points).toHaveLength(5);
    for (const [x, y] of line!.points) {
      const band = curve.line!.find(({ at }) => at === x)!;
      expect(y).toBeGreaterThan(band.low);
      expect(y).toBeLessThan(band.high);
    }
    expect(plot.rules).toMatchObject([{ x: 7.2, label: "7.2 %" }]);
    expect(plot.strips).toEqual([{ from: 2, to: 7.2 }]);
    expect(plotSvg(plot, 700, PALETTES.light, measure, "one")).toContain("Backup: slack [%]");
  });

  it("joins no numbers between which there is nothing, and tells their intervals as bars", () => {
    const { line: _, ...apart } = curve;
    const plot = sweepPlot(
      rig,
      { ...apart, knobs: [connections], limits: [], points: [0, 1, 2].map((at) => pointAt([at], 1.1)) },
      ["n"],
    );
    expect(plot.curves).toEqual([]);
    expect(plot.bands).toEqual([]);
    expect(plot.marks.filter(({ kind }) => kind === "between")).toHaveLength(3);
    expect(plot.x.ticks.map(({ text }) => text)).toEqual(["0", "1", "2"]);
  });

  it("leaves a limit out that lies far off, rather than draw it where it is not", () => {
    const far = { ...limit, value: 20 };
    const plot = sweepPlot(rig, { ...curve, limits: [{ limit: far, crossings: [] }] }, ["slack"]);
    expect(plot.curves).toHaveLength(1);
  });
});

describe("a sweep of two numbers", () => {
  it("marks every pair, and outlines the region only where it does not end with the range", () => {
    const plot = sweepPlot(rig, map, ["slack", "mass"]);
    expect(plot.marks.map(({ kind }) => kind)).toEqual(["keeps", "keeps", "open", "keepsNot"]);
    expect(plot.bands).toHaveLength(1);
    expect(plot.curves.map(({ points }) => points)).toEqual([
      [
        [8, 60],
        [6, 80],
      ],
    ]);
  });

  it("draws every mark in the frame", () => {
    const plot = sweepPlot(rig, map, ["slack", "mass"]);
    const ink = createSvgInk(measure, "two");
    const frame = frameOf(plot, 380, ink);
    drawPlot(ink, plot, 380, PALETTES.dark);
    for (const { at } of plot.marks) {
      expect(frame.x.px(at[0])).toBeGreaterThan(frame.left);
      expect(frame.x.px(at[0])).toBeLessThan(frame.right);
      expect(frame.y.px(at[1])).toBeGreaterThan(frame.top);
      expect(frame.y.px(at[1])).toBeLessThan(frame.bottom);
    }
  });
});
