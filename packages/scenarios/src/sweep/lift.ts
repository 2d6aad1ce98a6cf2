/**
 * A curve lifted to what the draws of its points say, where these say worse.
 *
 * `fit.ts` makes a curve with one scatter all along; a point's own draws (`levels.ts`) may say worse: a law that the few functions do
 * not follow, or a catch that now and then pulls a second time, which lies under no normal law's tail but in the order of the draws. At
 * a point the worse of the two counts. Between points the lift is joined by straight lines, so that all that is told (the curve, what
 * keeps a limit, where it is met, the region on a map) is of one and the same curve and contradicts no point's own draws.
 *
 * A lift only makes worse: the value goes up, the worse end of the band by as much at least, and the better end stays. So the interval of
 * a crossing reaches as far out of the kept side as without a lift, and as far or farther into it.
 */
import type { KnobAxis } from "./basis.ts";
import type { CurveLevel } from "./fit.ts";
import { isApart } from "./knob.ts";

type Curve = (values: readonly number[]) => CurveLevel | undefined;

export interface LiftQuestion {
  readonly axes: readonly KnobAxis[];
  readonly points: readonly { readonly values: readonly number[] }[];
  /** The level from a point's own draws, by the index of the point; a number is the worse the larger it is. */
  readonly own: ReadonlyMap<number, CurveLevel>;
  readonly curve: Curve;
}

interface Lift {
  readonly value: number;
  readonly high: number;
}

export function lifted({ axes, points, own, curve }: LiftQuestion): Curve {
  const lifts = new Map<string, Lift>();
  for (const [point, level] of own) {
    const { values } = points[point]!;
    const fitted = curve(values);
    if (fitted) lifts.set(keyOf(values), liftAt(fitted, level));
  }
  return (values) => {
    const level = curve(values);
    if (!level) return undefined;
    const { value, high } = joined(axes, lifts, values);
    return { value: level.value + value, low: level.low, high: level.high + high };
  };
}

const keyOf = (values: readonly number[]): string => values.join(" ");

function liftAt(fitted: CurveLevel, own: CurveLevel): Lift {
  const value = Math.max(0, own.value - fitted.value);
  return { value, high: value === 0 ? 0 : Math.max(value, own.high - fitted.high) };
}

/** The lift from the points around a place; a missing point leaves its share to the others. */
function joined(axes: readonly KnobAxis[], lifts: ReadonlyMap<string, Lift>, values: readonly number[]): Lift {
  const corners = axes.reduce<readonly { readonly values: readonly number[]; readonly share: number }[]>(
    (all, axis, k) =>
      all.flatMap((corner) =>
        neighbours(axis, values[k]!).map(({ at, share }) => ({
          values: [...corner.values, at],
          share: corner.share * share,
        })),
      ),
    [{ values: [], share: 1 }],
  );
  let [all, value, high] = [0, 0, 0];
  for (const corner of corners) {
    const lift = lifts.get(keyOf(corner.values));
    if (!lift) continue;
    all += corner.share;
    value += corner.share * lift.value;
    high += corner.share * lift.high;
  }
  return all > 0 ? { value: value / all, high: high / all } : { value: 0, high: 0 };
}

/** The values of points to either side, with their shares; a value that a point has, alone. */
function neighbours({ knob, values }: KnobAxis, x: number): readonly { readonly at: number; readonly share: number }[] {
  const after = values.findIndex((value) => value >= x);
  if (after < 0 || values[after] === x || after === 0 || isApart(knob)) {
    return [{ at: values[after < 0 ? values.length - 1 : after]!, share: 1 }];
  }
  const [a, b] = [values[after - 1]!, values[after]!];
  const share = (x - a) / (b - a);
  return [
    { at: a, share: 1 - share },
    { at: b, share },
  ];
}
