export { csvChunks } from "./csv.ts";
export { cursorSentence, stripSentence } from "./describe.ts";
export { axisSeconds, secondsDecimals } from "./digits.ts";
export type { EndLabel } from "./endLabel.ts";
export { type BandKind, balanceSentence, type EnergyStack, energyStack } from "./energyBands.ts";
export { energyData } from "./energyData.ts";
export { energyDrawing } from "./energyDrawing.ts";
export { axisKilojoules, bandLabels, energyWordsAt } from "./energyLabels.ts";
export { type EventMark, eventMarks, eventRange, markUnder, neighbouringMark } from "./eventMarks.ts";
export { type ForceView, forceData, forceDrawing, readyPyramid } from "./forceDrawing.ts";
export { axisKilonewtons, forceLabels, forcePeaks } from "./forceMarks.ts";
export { type ForceColumn, rangeTable, sampleTable } from "./forceTable.ts";
export { goToEntries } from "./goTo.ts";
export { LAYOUT_LOOKS, type LayoutLook } from "./layoutLook.ts";
export { COMPARED_TRACES, type ComparedId, layoutTraceData } from "./layoutTraceData.ts";
export {
  hardestTold,
  layoutDrawing,
  layoutFrame,
  layoutLabels,
  layoutProbes,
  layoutsAt,
  type TraceLook,
} from "./layoutTraces.ts";
export { PEAK_WORDS_SIZE, type PeakMark, peakUnder, wordedPeaks } from "./peakMark.ts";
export type { PlotData, PlotDrawing, PlotSeries } from "./plotDrawing.ts";
export { type Gutter, type PlotFrame, type PlotRoom, plotFrame, timeOf, xOf, yOf } from "./plotFrame.ts";
export type { TimeRange } from "./plotGrid.ts";
export type { Probe } from "./probe.ts";
export { type DrawnRange, pinched, RangeHand, type RangeTarget, wheeled } from "./rangeGestures.ts";
export { type DrawnSamples, forceProbes, forceView } from "./shownForces.ts";
export { type LaidFlag, laidFlags, laidNames, stripGutter } from "./stripLayout.ts";
export { type PlotRequest, timePicture, wholeRun } from "./timePicture.ts";
export { forceAt, type TraceSet, traceSet } from "./traceSet.ts";
export {
  loadedTraces,
  type PlottedTrace,
  type Reading,
  shownAtFirst,
  type TraceId,
  type TraceStyle,
  tracesOf,
} from "./traces.ts";
export { type RangeEnd, typedRange } from "./typedRange.ts";
export { fitRange, isFit, panned, rangeShowing, zoomed } from "./visibleRange.ts";
