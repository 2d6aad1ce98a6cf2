import type { TraceBand, TraceLine } from "@secondline/scenarios";
import { expect, it } from "vitest";
import { PALETTES } from "../src/palette.ts";
import { bandColumns, bandedTrace } from "../src/time/drawsBand.ts";
import { type ForceView, forceData, forceDrawing } from "../src/time/forceDrawing.ts";
import { traceSet } from "../src/time/traceSet.ts";
import { shownAtFirst, tracesOf } from "../src/time/traces.ts";
import { timeRecording } from "./timeRecording.ts";

const recording = timeRecording();
const BINS = 160;
/** Of every line the same, as long as the run's first half [N]. */
const edges = Array.from({ length: BINS }, (_, bin) => [100 + bin, 20_000 + bin]).flat();
const band: TraceBand = {
  draws: 8,
  duration: recording.duration / 2,
  bins: BINS,
  ...(Object.fromEntries(
    ["leash", "mainA", "mainB", "backupA", "backupB", "anchorA", "anchorB"].map((line) => [line, edges]),
  ) as Record<TraceLine, number[]>),
};
const atFirst = shownAtFirst(recording);
const view: ForceView = {
  shown: tracesOf(recording).filter(({ id }) => atFirst.has(id)),
  reading: "filtered",
  rawBehind: false,
  highlight: null,
  band,
};
const whole = { from: 0, to: recording.duration };
const dataOf = (of: ForceView) => {
  const traces = traceSet(recording);
  for (const { id } of of.shown) traces.require(id, "filtered");
  return forceData(recording, traces, null, of, whole, 400);
};

it("lies behind the leash, or behind the line that is pointed at; behind none that has no draws", () => {
  expect(bandedTrace(view.shown, null, band)?.id).toBe("leash");
  const other = view.shown.find(({ id }) => id.startsWith("main") || id.startsWith("backup"))!;
  expect(bandedTrace(view.shown, other.id, band)?.id).toBe(other.id);
  expect(bandedTrace(view.shown, "ringOnMain", band)).toBeUndefined();
  expect(bandedTrace(view.shown, null, undefined)).toBeUndefined();
  expect(bandedTrace([], null, band)).toBeUndefined();
});

it("has in every moment the edges of its bin, and ends where the draws end", () => {
  const middle = (bin: number) => ((bin + 0.5) / BINS) * band.duration;
  const [low, high] = bandColumns(band, { id: "leash" }, [middle(0), middle(7), band.duration, band.duration + 0.01]);
  expect(low).toEqual([100, 107, 259, null]);
  expect(high).toEqual([20_000, 20_007, 20_159, null]);
});

it("is drawn behind every trace, and the axis goes up to it", () => {
  const drawing = forceDrawing(view, false, PALETTES.light);
  const plain = forceDrawing({ ...view, band: undefined }, false, PALETTES.light);
  expect(drawing.series.length).toBe(plain.series.length + 2);
  expect(drawing.bands.map(({ series }) => series)).toEqual([[2, 1]]);
  expect(plain.bands).toEqual([]);
  const { columns, top } = dataOf(view);
  expect(columns).toHaveLength(drawing.series.length + 1);
  expect(columns[1]![0]).toBe(100);
  expect(columns[2]![0]).toBe(20_000);
  expect(top).toBeGreaterThan(20_159);
  expect(dataOf({ ...view, band: undefined }).top).toBeLessThan(20_159);
});
