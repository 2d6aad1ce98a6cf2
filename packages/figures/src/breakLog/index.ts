export { breakLogPlots, FIGURE_KINDS, type FigureKind } from "./breakLogPlots.ts";
export { dotPlot, resultMark, type TestDot } from "./dotPlot.ts";
export { plotsCsv } from "./plotsCsv.ts";
