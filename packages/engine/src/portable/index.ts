/**
 * Functions that JavaScript leaves to the engine in their last bits, made of + − × ÷ √, which it does not. A chaotic catch shows
 * the last bit: whatever reaches a run must come from here, so that it is the same run everywhere.
 */
export { exp, expm1 } from "./exponential.ts";
export { asinh, cosh, sinh } from "./hyperbolic.ts";
export { hypot } from "./hypot.ts";
export { log, log1p } from "./logarithm.ts";
export { cos, sin, tan } from "./trigonometry.ts";
