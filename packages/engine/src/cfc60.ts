/**
 * Channel frequency class 60 of SAE J211-1 / ISO 6487: a two-pole Butterworth low-pass run forward and backward, so that
 * peaks keep their place in time. Coefficients as in SAE J211-1, appendix C.
 */
const CLASS = 60;
/** Least rate that carries the class [1/s]. */
const LEAST_RATE = 600;

/** Of y = a0·(x + x₂) + a1·x₁ + b1·y₁ + b2·y₂, x₁ and y₁ one sample before, x₂ and y₂ two [-]. */
export interface Coefficients {
  readonly a0: number;
  readonly a1: number;
  readonly b1: number;
  readonly b2: number;
}

function coefficients(rate: number): Coefficients {
  if (!(rate >= LEAST_RATE)) throw new RangeError(`CFC 60 needs at least ${LEAST_RATE} samples a second, got ${rate}`);
  // 2.0775: the class names the frequency up to which the response is flat; the corner of the double pass lies above it.
  const corner = Math.tan((Math.PI * CLASS * 2.0775) / rate);
  const square = corner * corner;
  const norm = 1 + Math.SQRT2 * corner + square;
  const a0 = square / norm;
  return { a0, a1: 2 * a0, b1: (-2 * (square - 1)) / norm, b2: (-1 + Math.SQRT2 * corner - square) / norm };
}

/** The filter for signals of one rate [1/s], which must be at least 600. */
export class Cfc60 {
  readonly coefficients: Coefficients;
  /**
   * One pass makes of a signal within m ± h one within m ± gain·h, wherever it begins or ends: Σ|impulse response| [-].
   * Both passes together stay within m ± gain²·h.
   */
  readonly gain: number;

  constructor(rate: number) {
    this.coefficients = coefficients(rate);
    const impulse = new Float64Array(Math.ceil(0.1 * rate) + 1);
    impulse[1] = 1;
    this.#pass(impulse, impulse.length, false);
    this.gain = impulse.reduce((sum, response) => sum + Math.abs(response), 0);
  }

  /** Filters the first `count` samples in place; the signal is taken as constant before its first and after its last. */
  smooth(samples: Float64Array, count: number): void {
    this.#pass(samples, count, false);
    this.#pass(samples, count, true);
  }

  /** The second pass, over the first `count` samples of what the first one made, in place. */
  smoothBack(samples: Float64Array, count: number): void {
    this.#pass(samples, count, true);
  }

  /** One pass over `count` samples in place, from the first on or from the last back. */
  #pass(s: Float64Array, count: number, back: boolean): void {
    const { a0, a1, b1, b2 } = this.coefficients;
    const by = back ? -1 : 1;
    let i = back ? count - 1 : 0;
    let x1 = s[i]!;
    let x2 = x1;
    let y1 = x1;
    let y2 = x1;
    for (let n = 0; n < count; n++, i += by) {
      const x = s[i]!;
      const y = a0 * (x + x2) + a1 * x1 + b2 * y2 + b1 * y1;
      x2 = x1;
      x1 = x;
      y2 = y1;
      y1 = y;
      s[i] = y;
    }
  }
}

/**
 * Filters samples taken at `rate` [1/s]; the signal is taken as constant before its first and after its last sample.
 * A rate under 600 1/s cannot carry the class and throws.
 */
export function cfc60(samples: Float32Array | Float64Array, rate: number): Float64Array {
  const filter = new Cfc60(rate);
  const out = Float64Array.from(samples);
  if (out.length > 0) filter.smooth(out, out.length);
  return out;
}
