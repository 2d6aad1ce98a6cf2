export { frontierPlot } from "./frontierPlot.ts";
