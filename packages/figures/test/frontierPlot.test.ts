import type { FrontierLayout } from "@secondline/scenarios";
import { expect, it } from "vitest";
import { createSvgInk, drawPlot, PALETTES, plotSvg } from "../src/index.ts";
import { frontierPlot } from "../src/layouts/index.ts";

const layouts: readonly FrontierLayout[] = [
  { name: "One", at: { load: 6000, drop: 4, weight: 9.21 }, standing: { kind: "unbeaten" } },
  {
    name: "Two",
    at: { load: 6010, drop: 4.6, weight: 9.9 },
    standing: { kind: "beaten", by: 0, inWhat: ["drop", "weight"] },
  },
  { name: "Three", at: { load: 4800, drop: 6.5, weight: 9.2 }, standing: { kind: "unbeaten" } },
  { name: "Four", at: { load: 2000, drop: 30, weight: 5 }, standing: { kind: "fails" } },
];
const letters = ["A", "B", "C", "D"];
const measure = (text: string) => 7 * text.length;

it("marks each layout at its load and drop, by its standing", () => {
  const plot = frontierPlot(layouts, letters)!;
  expect(plot.marks.map(({ kind, at }) => [kind, ...at])).toEqual([
    ["best", 4, 6],
    ["beaten", 4.6, 6.01],
    ["best", 6.5, 4.8],
    ["keepsNot", 30, 2],
  ]);
  for (const { at } of plot.marks) {
    expect(at[0]).toBeGreaterThan(plot.x.from);
    expect(at[0]).toBeLessThan(plot.x.to);
  }
});

it("names each by letter and weight, rounded up, and no name covers another", () => {
  const { texts, y } = frontierPlot(layouts, letters)!;
  expect(texts.map(({ text }) => text).sort()).toEqual(["A, 9.3 kg", "B, 9.9 kg", "C, 9.2 kg", "D, 5.0 kg"]);
  const heights = texts.map(({ at }) => (200 * at[1]) / (y.to - y.from)).sort((a, b) => a - b);
  heights.slice(1).forEach((height, i) => {
    expect(height - heights[i]!).toBeGreaterThan(15);
  });
});

it("says in words which layouts are not beaten, which ones beat the others, and the numbers of each", () => {
  const svg = plotSvg(frontierPlot(layouts, letters)!, 600, PALETTES.light, measure, "f");
  for (const told of [
    "A and C are not beaten",
    "B is beaten by A: no more of anything, and less drop and weight.",
    "D fails and stands outside",
    "C: 4.80 kN, 6.5 m down, 9.2 kg.",
  ])
    expect(svg).toContain(told);
});

it("draws one layout alone, and none without numbers", () => {
  const one = frontierPlot(layouts.slice(0, 1), letters)!;
  expect(one.x.to).toBeGreaterThan(one.x.from);
  const ink = createSvgInk(measure, "f");
  drawPlot(ink, one, 380, PALETTES.dark);
  expect(ink.document(380, 300, "")).toContain("A, 9.3 kg");
  expect(frontierPlot([{ name: "One", standing: { kind: "unknown" } }], letters)).toBeUndefined();
});
