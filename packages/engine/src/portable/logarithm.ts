/**
 * ln x and ln (1 + x) by + − × ÷ alone, so that every JavaScript engine gives the same bits. Ports of e_log.c and s_log1p.c of
 * FreeBSD's msun, which are Sun's fdlibm (its notice stands in `exponential.ts`). Errors below 1 ulp.
 */
import { apart, LN2_HIGH, LN2_LOW, takeApart } from "./powerOf2.ts";

/** ln (1 + f) less f, for √½ < 1 + f < √2, as its two parts: s·(f²/2 + R) is to be added, f²/2 to be taken off. */
function series(f: number): number {
  const s = f / (2 + f);
  const z = s * s;
  const R =
    z *
    (0.6666666666666735 +
      z *
        (0.3999999999940942 +
          z *
            (0.2857142874366239 +
              z *
                (0.22222198432149784 +
                  z * (0.1818357216161805 + z * (0.15313837699209373 + z * 0.14798198605116586))))));
  return s * (0.5 * f * f + R);
}

/** Natural logarithm; −∞ at 0, not a number below it. */
export function log(x: number): number {
  if (!(x > 0) || x === Number.POSITIVE_INFINITY) return x === 0 ? Number.NEGATIVE_INFINITY : x > 0 ? x : Number.NaN;
  takeApart(x);
  const { k } = apart;
  const f = apart.fraction - 1;
  return k * LN2_HIGH - (0.5 * f * f - (series(f) + k * LN2_LOW) - f);
}

/** ln (1 + x), exact also where x is small. */
export function log1p(x: number): number {
  if (!(x > -1) || x === Number.POSITIVE_INFINITY) return x === -1 ? Number.NEGATIVE_INFINITY : x > 0 ? x : Number.NaN;
  if (Math.abs(x) < 1.1102230246251565e-16) return x;
  let k = 0;
  let f = x;
  let lost = 0;
  if (x < -0.2928932188134524 || x > 0.41421356237309503) {
    const u = 1 + x;
    takeApart(u);
    k = apart.k;
    f = apart.fraction - 1;
    // What of x did not get into 1 + x.
    lost = k < 54 ? (k >= 2 ? 1 - (u - x) : x - (u - 1)) / u : 0;
  }
  return series(f) + (k * LN2_LOW + lost) - 0.5 * f * f + f + k * LN2_HIGH;
}
