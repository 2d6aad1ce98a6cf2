export { sweepPlot } from "./sweepPlot.ts";
