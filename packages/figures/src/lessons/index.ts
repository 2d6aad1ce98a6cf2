export { alongRibbon, RIBBON_SIZE } from "./alongRibbon.ts";
export { dotStrip, STRIP_WIDTH } from "./dotStrip.ts";
export { CURVE_SIZE, sweepCurve } from "./sweepCurve.ts";
