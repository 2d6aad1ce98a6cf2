export { alongRibbon, RIBBON_WIDTH, ribbonHeight } from "./alongRibbon.ts";
export { dotStrip, STRIP_WIDTH } from "./dotStrip.ts";
export { CURVE_SIZE, sweepCurve } from "./sweepCurve.ts";
