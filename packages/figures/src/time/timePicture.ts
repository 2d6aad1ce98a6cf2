/** The plots of forces and of energy, drawn for a picture that is kept. */

import type { Recording } from "@secondline/engine";
import { type BreaksTold, quantity } from "@secondline/words";
import { sayDraws } from "@secondline/words/draws";
import { sayTime } from "@secondline/words/page/time";
import type { Ink } from "../ink/ink.ts";
import type { Palette } from "../palette.ts";
import type { PictureBody } from "../sheet.ts";
import { type Band, energyStack, indexAt } from "./energyBands.ts";
import { energyData } from "./energyData.ts";
import { axisKilojoules, bandLabels } from "./energyLabels.ts";
import { eventMarks } from "./eventMarks.ts";
import { type ForceView, forceData, forceDrawing } from "./forceDrawing.ts";
import { axisKilonewtons, forceLabels, forcePeaks } from "./forceMarks.ts";
import { wordedPeaks } from "./peakMark.ts";
import { type PlotFrame, plotFrame, xOf, yOf } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";
import { drawAxes, drawCursor, drawEvents, drawNames, PLOT_FONT, type PlotSheet } from "./plotInk.ts";
import { forceAt, traceSet } from "./traceSet.ts";
import { shownAtFirst, tracesOf } from "./traces.ts";

export interface PlotRequest {
  readonly recording: Recording;
  readonly previous: Recording | undefined;
  /** Parts that gave way in the run, as its outcome names them. */
  readonly told?: BreaksTold | undefined;
  readonly range: TimeRange;
  /** Time of the cursor [s]. */
  readonly time: number;
  /** Null: the picture shows the energy instead of forces. */
  readonly forces: ForceView | null;
}

interface Size {
  readonly width: number;
  readonly height: number;
}
const PLOT_SIZE: Size = { width: 1040, height: 400 };
/** Number of points of a trace: more than a page prints [-]. */
const TRACE_COLUMNS = 1600;

export function timePicture(request: PlotRequest, palette: Palette, size: Size = PLOT_SIZE): PictureBody {
  const { forces } = request;
  const draw = (ink: Ink) =>
    forces ? drawForces(ink, request, forces, palette, size) : drawEnergy(ink, request, palette, size);
  return { ...size, draw };
}

/** Forces over the whole run, with the traces that are drawn until the reader chooses. */
export function wholeRun(recording: Recording, time: number): PlotRequest {
  const shown = shownAtFirst(recording);
  return {
    recording,
    previous: undefined,
    range: { from: 0, to: recording.duration },
    time,
    forces: {
      shown: tracesOf(recording).filter(({ id }) => shown.has(id)),
      reading: "filtered",
      rawBehind: false,
      highlight: null,
    },
  };
}

function drawForces(ink: Ink, request: PlotRequest, forces: ForceView, palette: Palette, size: Size): void {
  const { recording, previous, range } = request;
  const traces = traceSet(recording);
  const before = previous ? traceSet(previous) : null;
  for (const { id } of forces.shown) {
    traces.require(id, forces.reading);
    if (forces.rawBehind) traces.require(id, "raw");
    if (before?.ids.has(id)) before.require(id, forces.reading);
  }
  const frame = plotFrame({ ...size, compact: false, gutter: { wide: 214, compact: 214 } });
  const { columns, top } = forceData(recording, traces, before, { ...forces, highlight: null }, range, TRACE_COLUMNS);
  const sheet: PlotSheet = { ink, frame, palette, range, top };
  drawAxes(sheet, axisKilonewtons);
  drawEvents(sheet, eventMarks(recording, request.told));
  ink.save();
  clipTo(ink, frame);
  const drawing = forceDrawing({ ...forces, highlight: null }, before !== null, palette);
  for (const { series, fill } of drawing.bands) {
    ink.fillStyle = fill;
    areaPath(ink, columns[0]!, columns[series[1]]!, columns[series[0]]!, sheet);
    ink.fill();
  }
  drawing.series.forEach((series, i) => {
    if (series.width === 0) return;
    ink.strokeStyle = series.stroke;
    ink.lineWidth = series.width;
    ink.globalAlpha = series.alpha;
    ink.setLineDash([...series.dash]);
    ink.lineJoin = "round";
    tracePath(ink, columns[0]!, columns[i + 1]!, sheet);
    ink.stroke();
  });
  ink.restore();
  drawPeaks(sheet, { ...forces, highlight: null });
  drawCursor(sheet, request.time);
  const probes = forces.shown.map(({ id, colour }) => {
    const pyramid = traces.require(id, forces.reading);
    return { key: id, colour: palette[colour], valueAt: (time: number) => forceAt(pyramid, recording.rate, time) };
  });
  const labels = forceLabels(recording, forces, probes, range, frame, top, false);
  drawNames(sheet, labels, ({ rank }) => quantity.load(rank));
  ink.font = PLOT_FONT;
  ink.fillStyle = palette.softInk;
  const pale = [
    forces.rawBehind ? sayTime("plotBody.thinRawSamples") : "",
    before ? sayTime("plotBody.wideRunBefore") : "",
    drawing.bands.length > 0 && forces.band ? sayDraws("band.key", { count: forces.band.draws }) : "",
  ].filter(Boolean);
  ink.fillText(["largest", ...pale].join(" · "), frame.left + frame.width + 18, 16);
}

function drawPeaks({ ink, frame, palette, range, top }: PlotSheet, forces: ForceView): void {
  const peaks = forcePeaks(forces, range, frame, top, palette);
  ink.font = PLOT_FONT;
  const worded = wordedPeaks(peaks, frame, (text) => ink.measureText(text).width);
  for (const { key, x, y, text, colour } of peaks) {
    ink.beginPath();
    ink.arc(frame.left + x, frame.top + y, 4, 0, 2 * Math.PI);
    ink.fillStyle = palette.paper;
    ink.fill();
    ink.strokeStyle = colour;
    ink.lineWidth = 1.75;
    ink.stroke();
    const side = worded.get(key);
    if (!side) continue;
    ink.fillStyle = colour;
    ink.textAlign = side === "right" ? "left" : "right";
    ink.fillText(text, frame.left + x + (side === "right" ? 7 : -7), frame.top + y - 4);
  }
  ink.textAlign = "left";
}

function drawEnergy(ink: Ink, { recording, range, time, told }: PlotRequest, palette: Palette, size: Size): void {
  const frame = plotFrame({ ...size, compact: false, gutter: { wide: 236, compact: 236 } });
  const stack = energyStack(recording.energy);
  const { columns: all, top } = energyData(stack, range);
  const columns = thinned(all);
  const sheet: PlotSheet = { ink, frame, palette, range, top };
  drawAxes(sheet, axisKilojoules);
  drawEvents(sheet, eventMarks(recording, told));
  const times = columns[0]!;
  stack.bands.forEach((band, i) => {
    ink.save();
    clipTo(ink, frame);
    areaPath(ink, times, columns[i + 1]!, columns[i + 2]!, sheet);
    fillBand(sheet, band, palette[band.colour]);
    ink.restore();
    ink.strokeStyle = palette[band.kind === "height" ? "softInk" : band.colour];
    ink.lineWidth = 1;
    tracePath(ink, times, columns[i + 2]!, sheet);
    ink.stroke();
  });
  drawCursor(sheet, time);
  const labels = bandLabels(stack, range, frame, top, palette, false);
  const at = indexAt(stack.times, time);
  drawNames(sheet, labels, (label) =>
    quantity.energy(stack.bands.find(({ key }) => key === label.key)?.values[at] ?? 0),
  );
  ink.font = PLOT_FONT;
  ink.fillStyle = palette.softInk;
  ink.fillText(
    sayTime("plotBody.energyFoot", { time: quantity.rounded(time, 3, "nearest") }),
    frame.left + frame.width + 18,
    16,
  );
}

/** The ledger is smooth: fewer points draw the same curves. */
function thinned(columns: readonly Column[]): readonly Column[] {
  const step = Math.ceil(columns[0]!.length / (TRACE_COLUMNS / 2));
  return columns.map((column) => Array.from(column).filter((_, i, every) => i % step === 0 || i === every.length - 1));
}

/**
 * Lost energy is hatched, energy of motion dotted, stored energy plain, height bare: a reader can tell them apart in black and
 * white.
 */
function fillBand({ ink, frame }: PlotSheet, { kind }: Band, colour: string): void {
  ink.fillStyle = `${colour}${kind === "height" ? "14" : kind === "stored" ? "38" : "40"}`;
  ink.fill();
  if (kind !== "lost" && kind !== "moving") return;
  ink.clip();
  const { left, top, width, height } = frame;
  ink.strokeStyle = colour;
  ink.globalAlpha = 0.7;
  ink.lineWidth = kind === "lost" ? 0.8 : 1.2;
  if (kind === "moving") ink.setLineDash([1.2, 5]);
  ink.beginPath();
  for (let x = -height; x < width; x += 7) {
    ink.moveTo(left + x, top + height);
    ink.lineTo(left + x + height, top);
  }
  ink.stroke();
}

function clipTo(ink: Ink, { left, top, width, height }: PlotFrame): void {
  ink.beginPath();
  ink.rect(left, top - 2, width, height + 3);
  ink.clip();
}

type Column = ArrayLike<number | null | undefined>;

function tracePath(ink: Ink, times: Column, values: Column, { frame, range, top }: PlotSheet): void {
  ink.beginPath();
  let drawing = false;
  for (let i = 0; i < times.length; i++) {
    const value = values[i];
    if (value === null || value === undefined) {
      drawing = false;
      continue;
    }
    const x = frame.left + xOf(times[i]!, range, frame);
    const y = frame.top + yOf(value, top, frame);
    if (drawing) ink.lineTo(x, y);
    else ink.moveTo(x, y);
    drawing = true;
  }
}

function areaPath(ink: Ink, times: Column, low: Column, high: Column, { frame, range, top }: PlotSheet): void {
  const put = (i: number, edge: Column) =>
    ink.lineTo(frame.left + xOf(times[i]!, range, frame), frame.top + yOf(edge[i]!, top, frame));
  // A band of draws may end before the run does.
  let end = times.length;
  while (end > 0 && (high[end - 1] ?? null) === null) end--;
  ink.beginPath();
  for (let i = 0; i < end; i++) put(i, high);
  for (let i = end - 1; i >= 0; i--) put(i, low);
  ink.closePath();
}
