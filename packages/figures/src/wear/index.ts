export { alongPaper, overview, RIBBON_HEIGHT, sightWindow } from "./alongPaper.ts";
export {
  type CalendarTick,
  calendarPaper,
  calendarStays,
  dayLine,
  entryMark,
  HEAD_HEIGHT,
  STAY_HEIGHT,
  type TakeDownMark,
  takeDownBand,
} from "./calendar.ts";
export { bandLabel, stayBar } from "./calendarLabels.ts";
export { laneBar, laneEnd, laneHead } from "./lanes.ts";
export { WEAR_TILES } from "./patterns.ts";
export { spanDimension } from "./spanDimension.ts";
export { shortfall, strengthPath } from "./strengthCurve.ts";
export { readingLine, readingWords, type StrengthPlot, strengthPlot } from "./strengthPlot.ts";
