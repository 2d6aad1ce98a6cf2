/**
 * Channel frequency class 60 of SAE J211-1 / ISO 6487: a two-pole Butterworth low-pass run forward and backward, so that
 * peaks keep their place in time. Coefficients as in SAE J211-1, appendix C.
 */
const CLASS = 60;

interface Coefficients {
  a0: number;
  a1: number;
  b1: number;
  b2: number;
}

function coefficients(rate: number): Coefficients {
  // 2.0775: the class names the frequency up to which the response is flat; the corner of the double pass lies above it.
  const corner = Math.tan((Math.PI * CLASS * 2.0775) / rate);
  const square = corner * corner;
  const norm = 1 + Math.SQRT2 * corner + square;
  const a0 = square / norm;
  return { a0, a1: 2 * a0, b1: (-2 * (square - 1)) / norm, b2: (-1 + Math.SQRT2 * corner - square) / norm };
}

/**
 * Filters samples taken at `rate` [1/s]; the signal is taken as constant before its first and after its last sample.
 * A rate under 600 1/s cannot carry the class and throws.
 */
export function cfc60(samples: Float32Array | Float64Array, rate: number): Float64Array {
  if (!(rate >= 600)) throw new RangeError(`CFC 60 needs at least 600 samples a second, got ${rate}`);
  const { a0, a1, b1, b2 } = coefficients(rate);
  const out = new Float64Array(samples.length);
  const last = samples.length - 1;
  if (last < 0) return out;
  let [x1, x2, y1, y2] = [samples[0]!, samples[0]!, samples[0]!, samples[0]!];
  for (let i = 0; i <= last; i++) {
    const x = samples[i]!;
    const y = a0 * (x + x2) + a1 * x1 + b1 * y1 + b2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    out[i] = y;
  }
  x1 = x2 = y1 = y2 = out[last]!;
  for (let i = last; i >= 0; i--) {
    const x = out[i]!;
    const y = a0 * (x + x2) + a1 * x1 + b1 * y1 + b2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    out[i] = y;
  }
  return out;
}
