/** What exponential and logarithm share: powers of two, which are exact, and ln 2 in two parts of which the first has spare bits. */

export const LN2_HIGH = 0.6931471803691238;
export const LN2_LOW = 1.9082149292705877e-10;

const HIGHEST_POWER = 8.98846567431158e307;
const LOWEST_POWER = 2.2250738585072014e-308;

/** Power of two for |k| ≤ 1022, by squaring: exact. */
function powerOf2(k: number): number {
  let factor = k < 0 ? 0.5 : 2;
  let power = 1;
  for (let left = Math.abs(k); left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) power *= factor;
    if (left > 1) factor *= factor;
  }
  return power;
}

/** x·2ᵏ, exact where the result is not below the least normal number. */
export function timesPowerOf2(x: number, k: number): number {
  let value = x;
  let left = k;
  for (; left > 1022; left -= 1023) value *= HIGHEST_POWER;
  // Not all at once: a value on the way that is too small would be rounded twice.
  for (; left < -1022; left += 969) value *= LOWEST_POWER * 9007199254740992;
  return value * powerOf2(left);
}

/** Fraction and exponent of the number that was taken apart last: x = fraction·2ᵏ. */
export const apart = { fraction: 0, k: 0 };

/** Takes x > 0 apart into a fraction between √½ and √2 and a power of two, into `apart`. */
export function takeApart(x: number): void {
  let fraction = x;
  let k = 0;
  for (let by = 512; by >= 1; by /= 2) {
    const power = powerOf2(by);
    if (fraction >= power) {
      fraction /= power;
      k += by;
    } else if (fraction * power < 2) {
      fraction *= power;
      k -= by;
    }
  }
  if (fraction < 1) {
    // The least of the numbers below the normal ones.
    takeApart(fraction * 4503599627370496);
    apart.k += k - 52;
    return;
  }
  if (fraction > Math.SQRT2) {
    fraction *= 0.5;
    k += 1;
  }
  apart.fraction = fraction;
  apart.k = k;
}
