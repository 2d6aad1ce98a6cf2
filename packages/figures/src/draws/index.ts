export { stripPlot } from "./stripPlot.ts";
