export { breakLogPlots, FIGURE_KINDS, type FigureKind } from "./breakLogPlots.ts";
export { plotsCsv } from "./plotsCsv.ts";
