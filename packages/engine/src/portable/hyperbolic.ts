/**
 * Hyperbolic functions from the portable exponential and logarithm, by the formulas of e_sinh.c, e_cosh.c and s_asinh.c of FreeBSD's
 * msun, which are Sun's fdlibm (its notice stands in `exponential.ts`). Errors below 2 ulp.
 */
import { exp, expm1 } from "./exponential.ts";
import { log, log1p } from "./logarithm.ts";

/** From here on e⁻ˣ is lost beside eˣ. */
const ONE_TERM_FROM = 22;
/** From here on eˣ may be too large for a double while eˣ/2 is not. */
const HALVED_FROM = 709;

const halfExp = (x: number): number => {
  if (x < HALVED_FROM) return 0.5 * exp(x);
  const root = exp(0.5 * x);
  return 0.5 * root * root;
};

export function sinh(x: number): number {
  const size = Math.abs(x);
  const half = x < 0 ? -0.5 : 0.5;
  if (size >= ONE_TERM_FROM) return 2 * half * halfExp(size);
  const t = expm1(size);
  return size < 1 ? half * (2 * t - (t * t) / (t + 1)) : half * (t + t / (t + 1));
}

export function cosh(x: number): number {
  const size = Math.abs(x);
  if (size >= ONE_TERM_FROM) return halfExp(size);
  if (size < 0.34657359027997264) {
    const t = expm1(size);
    return 1 + (t * t) / (2 * (1 + t));
  }
  const t = exp(size);
  return 0.5 * t + 0.5 / t;
}

export function asinh(x: number): number {
  const size = Math.abs(x);
  if (!(size >= 1e-8)) return x;
  const found =
    size > 67_108_864
      ? log(size) + Math.LN2
      : size > 2
        ? log(2 * size + 1 / (Math.sqrt(size * size + 1) + size))
        : log1p(size + (size * size) / (1 + Math.sqrt(1 + size * size)));
  return x < 0 ? -found : found;
}
