/**
 * Channel frequency class 60 of SAE J211-1 / ISO 6487: a two-pole Butterworth low-pass run forward and backward, so that
 * peaks keep their place in time. Coefficients as in SAE J211-1, appendix C.
 */
import { cos, exp, hypot, sin, tan } from "../portable/index.ts";

const FREQUENCY_CLASS = 60;
/** Corner of one pass [1/s]. The class names the frequency up to which the response of both passes is flat; the corner lies above it. */
const CORNER_FREQUENCY = FREQUENCY_CLASS * 2.0775;
/** Least rate that carries the class [1/s]. */
const LEAST_RATE = 600;

/** Coefficients of y = a0·(x + x₂) + a1·x₁ + b1·y₁ + b2·y₂, with x₁ and y₁ one sample before, x₂ and y₂ two [-]. */
export interface Coefficients {
  readonly a0: number;
  readonly a1: number;
  readonly b1: number;
  readonly b2: number;
}

function coefficients(rate: number): Coefficients {
  if (!(rate >= LEAST_RATE)) throw new RangeError(`CFC 60 needs at least ${LEAST_RATE} samples a second, got ${rate}`);
  const corner = tan((Math.PI * CORNER_FREQUENCY) / rate);
  const square = corner * corner;
  const norm = 1 + Math.SQRT2 * corner + square;
  const a0 = square / norm;
  return { a0, a1: 2 * a0, b1: (-2 * (square - 1)) / norm, b2: (-1 + Math.SQRT2 * corner - square) / norm };
}

/** Where the filter of few samples has the gain of the class besides at rest [1/s]. */
const MATCHED_FREQUENCY = 200;

/**
 * Coefficients for samples so few that the standard's recipe, which bends frequencies together towards half the rate, would take
 * too much off what lasts a few of them only: poles where the analogue filter has them, zeros such that the gain is right
 * at rest and at MATCHED_FREQUENCY. Each sample is the mean of two readings `spacing` apart [s]; what that took off is given back.
 */
function coefficientsOfFew(rate: number, spacing: number): Coefficients {
  const pole = (Math.SQRT2 * Math.PI * CORNER_FREQUENCY) / rate;
  const radius = exp(-pole);
  const b1 = 2 * radius * cos(pole);
  const b2 = -radius * radius;
  const turn = (2 * Math.PI * MATCHED_FREQUENCY) / rate;
  const real = 1 - b1 * cos(turn) - b2 * cos(2 * turn);
  const imaginary = b1 * sin(turn) + b2 * sin(2 * turn);
  const square = (MATCHED_FREQUENCY / CORNER_FREQUENCY) * (MATCHED_FREQUENCY / CORNER_FREQUENCY);
  const gain = 1 / Math.sqrt((1 + square * square) * cos(Math.PI * MATCHED_FREQUENCY * spacing));
  const atRest = 1 - b1 - b2;
  const a0 = (atRest - gain * hypot(real, imaginary)) / (2 * (1 - cos(turn)));
  return { a0, a1: atRest - 2 * a0, b1, b2 };
}

/** The filter for signals of one rate [1/s], which must be at least 600. */
export class Cfc60 {
  readonly coefficients: Coefficients;
  /**
   * One pass makes of a signal within m ± h one within m ± gain·h, wherever it begins or ends: Σ|impulse response| [-].
   * Both passes together stay within m ± gain²·h.
   */
  readonly gain: number;

  /** `spacing` for a signal of few samples, each the mean of two readings so far apart, 0 for single ones [s] (see `coefficientsOfFew`). */
  constructor(rate: number, spacing?: number) {
    this.coefficients = spacing === undefined ? coefficients(rate) : coefficientsOfFew(rate, spacing);
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
  const out = new Float64Array(samples);
  if (out.length > 0) filter.smooth(out, out.length);
  return out;
}
