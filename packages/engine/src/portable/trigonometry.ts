/**
 * Sine, cosine and tangent by + − × ÷ alone, so that every JavaScript engine gives the same bits. Ports of k_sin.c, k_cos.c and
 * e_rem_pio2.c of FreeBSD's msun, which are Sun's fdlibm (its notice stands in `exponential.ts`). Errors below 1 ulp, the tangent's
 * below 2.
 */

/** Angles up to here can be brought into the first quadrant with what is left of a double [rad]. */
const LARGEST_ANGLE = 1_647_099;
const INVERSE_QUADRANT = 0.6366197723675814;
/** π/2 in three parts of 33 bits, and what is left. */
const QUADRANT_PART_1 = 1.5707963267341256;
const QUADRANT_PART_2 = 6.077100506303966e-11;
const QUADRANT_PART_3 = 2.0222662487111665e-21;
const QUADRANT_REST = 8.4784276603689e-32;

/** The angle that was reduced last: `high` + `low` from −π/4 to π/4, `quadrant` quarter turns on. */
const reduced = { high: 0, low: 0, quadrant: 0 };

function reduce(angle: number): void {
  if (!(Math.abs(angle) <= LARGEST_ANGLE))
    throw new RangeError(`an angle of ${angle} rad is none that can be reckoned with`);
  if (Math.abs(angle) <= 0.25 * Math.PI) {
    reduced.high = angle;
    reduced.low = 0;
    reduced.quadrant = 0;
    return;
  }
  const n = Math.round(angle * INVERSE_QUADRANT);
  const first = angle - n * QUADRANT_PART_1;
  const second = first - n * QUADRANT_PART_2;
  const third = second - n * QUADRANT_PART_3;
  const left = n * QUADRANT_REST - (second - third - n * QUADRANT_PART_3) - (first - second - n * QUADRANT_PART_2);
  const high = third - left;
  reduced.high = high;
  reduced.low = third - high - left;
  reduced.quadrant = ((n % 4) + 4) % 4;
}

function sineNear0(x: number, y: number): number {
  const z = x * x;
  const v = z * x;
  const r =
    0.00833333333332249 +
    z *
      (-0.0001984126982985795 + z * (2.7557313707070068e-6 + z * (-2.5050760253406863e-8 + z * 1.58969099521155e-10)));
  return x - (z * (0.5 * y - v * r) - y - v * -0.16666666666666632);
}

function cosineNear0(x: number, y: number): number {
  const z = x * x;
  const w = z * z;
  const r =
    z * (0.0416666666666666 + z * (-0.001388888888887411 + z * 2.480158728947673e-5)) +
    w * w * (-2.7557314351390663e-7 + z * (2.087572321298175e-9 + z * -1.1359647557788195e-11));
  const half = 0.5 * z;
  const most = 1 - half;
  return most + (1 - most - half + (z * r - x * y));
}

function inQuadrant(quadrant: number): number {
  const { high, low } = reduced;
  if (quadrant === 0) return sineNear0(high, low);
  if (quadrant === 1) return cosineNear0(high, low);
  return quadrant === 2 ? -sineNear0(high, low) : -cosineNear0(high, low);
}

/** Sine of an angle [rad]; one beyond a million throws. */
export function sin(angle: number): number {
  reduce(angle);
  return inQuadrant(reduced.quadrant);
}

/** Cosine of an angle [rad]; one beyond a million throws. */
export function cos(angle: number): number {
  reduce(angle);
  return inQuadrant((reduced.quadrant + 1) % 4);
}

/** Tangent of an angle [rad]; one beyond a million throws. */
export function tan(angle: number): number {
  return sin(angle) / cos(angle);
}
