export { type Ink, SANS, SERIF } from "./ink/ink.ts";
export { isKeptElement, isPlace, looksOf } from "./ink/looks.ts";
export { createSvgInk } from "./ink/svgInk.ts";
export { escapeXml, pathNumber } from "./ink/svgPath.ts";
export { textWidth } from "./ink/textWidth.ts";
export { labelHeights } from "./labelHeights.ts";
export { PALETTES, type Palette, type Theme } from "./palette.ts";
export { piled } from "./piled.ts";
export { drawPlot, plotHeight } from "./plot/drawPlot.ts";
export { type Frame, frameOf } from "./plot/frame.ts";
export type { Axis, Mark, Plot, PlotCurve, PlotRow, PlotRule, Tone } from "./plot/plot.ts";
export { plotSvg, plotsBody, plotsSvg } from "./plot/plotBody.ts";
export { roundTicks } from "./roundTicks.ts";
export { rowsOf } from "./rows.ts";
export { type Scale, scaleOf } from "./scale.ts";
export type { Paint, Shape, Tile } from "./shapes/shape.ts";
export {
  brokenLines,
  drawSheet,
  laySheet,
  type Picture,
  type PictureBody,
  type PictureWords,
  sheetSvg,
} from "./sheet.ts";
