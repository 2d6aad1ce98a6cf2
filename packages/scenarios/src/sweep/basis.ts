/** The smooth functions of what is swept. Each number of connections has a function of its own: there is nothing between two and three. */
import { isApart, type Knob } from "./knob.ts";

/** Largest power. It is at most half the number of points, so that the other points can say how well the curve fits [-]. */
const MOST_POWER = 3;
const powerFor = (points: number): number => Math.max(1, Math.min(MOST_POWER, Math.floor((points - 1) / 2)));

export interface KnobAxis {
  readonly knob: Knob;
  /** Values that points have. */
  readonly values: readonly number[];
}

/** φ at a place: products of the axes' functions; of two smooth ones those up to the power in all. */
export function basisOver(axes: readonly KnobAxis[]): (values: readonly number[]) => readonly number[] {
  const smooth = axes.filter(({ knob }) => !isApart(knob));
  const power = Math.min(...smooth.map(({ values }) => powerFor(values.length)));
  return (values) =>
    axes
      .map((axis, k) => {
        const x = values[k]!;
        if (isApart(axis.knob)) return axis.values.map((one) => ({ power: 0, value: one === x ? 1 : 0 }));
        const { from, to } = axis.knob;
        return legendre((2 * (x - from)) / (to - from) - 1, power).map((value, p) => ({ power: p, value }));
      })
      .reduce(
        (all, next) => all.flatMap((a) => next.map((b) => ({ power: a.power + b.power, value: a.value * b.value }))),
        [{ power: 0, value: 1 }],
      )
      .filter((one) => smooth.length === 0 || one.power <= power)
      .map(({ value }) => value);
}

/** Legendre polynomials from degree 0 on, at x from −1 to 1. */
function legendre(x: number, most: number): readonly number[] {
  const values = [1, x];
  for (let n = 1; n < most; n++) values.push(((2 * n + 1) * x * values[n]! - n * values[n - 1]!) / (n + 1));
  return values.slice(0, most + 1);
}
