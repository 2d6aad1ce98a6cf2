/**
 * eˣ and eˣ − 1 by + − × ÷ alone, so that every JavaScript engine gives the same bits. Ports of e_exp.c and s_expm1.c of
 * FreeBSD's msun, which are Sun's fdlibm: "Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved. Permission to use,
 * copy, modify, and distribute this software is freely granted, provided that this notice is preserved." Errors below 1 ulp.
 */
import { LN2_HIGH, LN2_LOW, timesPowerOf2 } from "./powerOf2.ts";

/** Largest x with a finite eˣ, and least with one above 0. */
const LARGEST_EXPONENT = 709.782712893384;
const LEAST_EXPONENT = -745.1332191019411;
/** From here down, eˣ − 1 is −1 to the last bit. */
const MINUS_ONE_BELOW = -38.816242111356935;
const INVERSE_LN2 = Math.LOG2E;

/** eˣ. */
export function exp(x: number): number {
  if (Number.isNaN(x)) return x;
  if (x > LARGEST_EXPONENT) return Number.POSITIVE_INFINITY;
  if (x < LEAST_EXPONENT) return 0;
  const k = Math.trunc(INVERSE_LN2 * x + (x < 0 ? -0.5 : 0.5));
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const r = high - low;
  const t = r * r;
  const c =
    r -
    t *
      (0.16666666666666602 +
        t *
          (-0.0027777777777015593 +
            t * (6.613756321437934e-5 + t * (-1.6533902205465252e-6 + t * 4.1381367970572385e-8))));
  return timesPowerOf2(1 - (low - (r * c) / (2 - c) - high), k);
}

/** eˣ − 1, exact also where x is small. */
export function expm1(x: number): number {
  if (Number.isNaN(x) || Math.abs(x) < 5.551115123125783e-17) return x;
  if (x > LARGEST_EXPONENT) return Number.POSITIVE_INFINITY;
  if (x < MINUS_ONE_BELOW) return -1;
  const k = Math.abs(x) <= 0.34657359027997264 ? 0 : Math.trunc(INVERSE_LN2 * x + (x < 0 ? -0.5 : 0.5));
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const r = high - low;
  const lost = high - r - low;
  const half = 0.5 * r;
  const square = r * half;
  const r1 =
    1 +
    square *
      (-0.03333333333333313 +
        square *
          (0.0015873015872548146 +
            square * (-7.93650757867488e-5 + square * (4.008217827329362e-6 + square * -2.0109921818362437e-7))));
  const t = 3 - r1 * half;
  let e = square * ((r1 - t) / (6 - r * t));
  if (k === 0) return r - (r * e - square);
  e = r * (e - lost) - lost - square;
  if (k === -1) return 0.5 * (r - e) - 0.5;
  if (k === 1) return r < -0.25 ? -2 * (e - (r + 0.5)) : 1 + 2 * (r - e);
  if (k <= -2 || k > 56) return timesPowerOf2(1 - (e - r), k) - 1;
  const gone = timesPowerOf2(1, -k);
  return timesPowerOf2(k < 20 ? 1 - gone - (e - r) : r - (e + gone) + 1, k);
}
