export { plainSide } from "./plainSide.ts";
export { rigSketch, SKETCH_SIZE } from "./rigSketch.ts";
