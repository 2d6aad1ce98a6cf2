/** One force of several runs on one axis. */
import { expect, it } from "vitest";
import { PALETTES } from "../src/palette.ts";
import { LAYOUT_LOOKS } from "../src/time/layoutLook.ts";
import { layoutTraceData } from "../src/time/layoutTraceData.ts";
import {
  hardestTold,
  layoutDrawing,
  layoutFrame,
  layoutLabels,
  layoutProbes,
  layoutsAt,
  type TraceLook,
} from "../src/time/layoutTraces.ts";
import { timeRecording } from "./timeRecording.ts";

const looks: readonly TraceLook[] = ["A", "B", "C", "D"].map((name, i) => ({ name, look: LAYOUT_LOOKS[i]! }));
const palette = PALETTES.light;
const [first, without] = [timeRecording(), timeRecording({ unloadedBackup: true })];
/** The second is not computed yet; in the third the backup never pulls. */
const runs = [first, undefined, without] as const;

it("draws a line for every run in its own look, and as many columns are there to be drawn", () => {
  const { series } = layoutDrawing(runs, looks, palette);
  expect(new Set(series.map(({ stroke, dash }) => `${stroke} ${dash}`)).size).toBe(3);
  const { columns } = layoutTraceData(runs, "leash", { from: 0, to: first.duration }, 300);
  expect(columns).toHaveLength(series.length + 1);
});

it("tells of runs in which the part pulls, and of no others", () => {
  const names = (trace: "leash" | "backupA") => layoutProbes(runs, trace, looks, palette).map(({ name }) => name);
  expect(names("leash")).toEqual(["A", "C"]);
  expect(names("backupA")).toEqual(["A"]);
  const letters = looks.map(({ name }) => name);
  expect(hardestTold(runs, "backupA", letters)).toMatch(/^Hardest: A [\d.]+ kN\.$/);
  expect(hardestTold([undefined], "backupA", letters)).not.toMatch(/kN/);
});

it("tells the values at the cursor, and names end where their traces do", () => {
  const probes = layoutProbes(runs, "leash", looks, palette);
  const { time } = { time: first.peaks.leash.cfc60Time };
  expect(layoutsAt(probes, "leash", time)).toMatch(/^[\d.]+ s\. leash: A [\d.]+ kN and C [\d.]+ kN$/);
  const frame = layoutFrame({ width: 800, height: 260, compact: false, gutter: { wide: 132, compact: 74 } });
  const peak = probes[0]!.valueAt(time)!;
  // At the top of the axis, and in its middle.
  expect(layoutLabels(probes, time, peak, frame)[0]!.y).toBeCloseTo(0, 9);
  expect(layoutLabels(probes, time, 2 * peak, frame)[0]!.y).toBeCloseTo(frame.height / 2, 9);
});

it("leaves no lane for the words of events, and stays inside of its figure", () => {
  const frame = layoutFrame({ width: 800, height: 260, compact: false, gutter: { wide: 132, compact: 74 } });
  expect(frame.top).toBe(frame.headroom);
  expect(frame.top + frame.height + frame.axisHeight).toBe(260);
  expect(frame.left + frame.width + frame.gutter).toBe(800);
});
