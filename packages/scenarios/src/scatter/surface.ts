/**
 * Events that differ by places and moments alone tell of each other: the logarithm of a load is taken for a smooth surface over them,
 * under chance (a Gaussian process; C. E. Rasmussen & C. K. I. Williams, Gaussian Processes for Machine Learning, 2006, algorithm 2.1).
 */
import { choleskyFactor, choleskySolve } from "@secondline/statistics";

/** A value at a place, and the variance that chance gives it. */
export interface KnownValue {
  readonly at: readonly number[];
  readonly value: number;
  readonly noise: number;
}

export interface Predicted {
  readonly middle: number;
  /** What the variance is at most, and what it is: worked out when it is asked for. */
  readonly height: number;
  readonly variance: number;
}

/** Over this distance a surface forgets; places are fractions of the line, moments shares of `MOMENT_REACH` [-]. */
const CORRELATION_LENGTH = 0.15;
/** How far a surface goes up and down at least, standard deviation of ln [-]. */
const LEAST_DEVIATION = 0.2;

const kernel = (a: readonly number[], b: readonly number[]): number =>
  Math.exp(-0.5 * a.reduce((sum, x, i) => sum + ((x - b[i]!) / CORRELATION_LENGTH) ** 2, 0));

/** The surface through what is known, at other places or the same. `known` has one value at least. */
export function surfaceThrough(known: readonly KnownValue[]): (at: readonly number[]) => Predicted {
  const middle = known.reduce((sum, { value }) => sum + value, 0) / known.length;
  const variance = known.reduce((sum, { value }) => sum + (value - middle) ** 2, 0) / known.length;
  const height = Math.max(LEAST_DEVIATION ** 2, variance);
  const root = choleskyFactor(
    known.map(({ at, noise }, i) => {
      const row = Float64Array.from(known, (other) => height * kernel(at, other.at));
      row[i]! += noise;
      return row;
    }),
  );
  const weights = choleskySolve(
    root,
    known.map(({ value }) => value - middle),
  );
  return (place) => {
    const near = new Float64Array(known.length);
    let mean = middle;
    for (let i = 0; i < near.length; i++) {
      near[i] = height * kernel(place, known[i]!.at);
      mean += near[i]! * weights[i]!;
    }
    return {
      middle: mean,
      height,
      get variance() {
        const solved = choleskySolve(root, near);
        return Math.max(0, height - near.reduce((sum, k, i) => sum + k * solved[i]!, 0));
      },
    };
  };
}
