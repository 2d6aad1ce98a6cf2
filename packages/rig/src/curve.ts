/**
 * The slow-pull curve: straight between two points, the monotone cubic of Fritsch & Carlson (SIAM J. Numer. Anal. 17,
 * 1980) through more, with three-point end slopes, continued straight beyond the last point. Strain [-], tension [N].
 */
export type Curve = readonly (readonly [strain: number, tension: number])[];

/** Slope at an end from its two neighbours, limited so that the curve keeps its direction [N]. */
function endSlope(h0: number, h1: number, d0: number, d1: number): number {
  const slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
  if (Math.sign(slope) !== Math.sign(d0)) return 0;
  if (Math.sign(d0) !== Math.sign(d1) && Math.abs(slope) > 3 * Math.abs(d0)) return 3 * d0;
  return slope;
}

/** Slopes at the points [N]: weighted harmonic mean of the chords inside. */
function slopes(curve: Curve): number[] {
  const n = curve.length;
  const h: number[] = [];
  const d: number[] = [];
  for (let i = 0; i + 1 < n; i++) {
    h.push(curve[i + 1]![0] - curve[i]![0]);
    d.push((curve[i + 1]![1] - curve[i]![1]) / h[i]!);
  }
  if (n === 2) return [d[0]!, d[0]!];
  const m: number[] = [endSlope(h[0]!, h[1]!, d[0]!, d[1]!)];
  for (let i = 1; i + 1 < n; i++) {
    const w1 = 2 * h[i]! + h[i - 1]!;
    const w2 = h[i]! + 2 * h[i - 1]!;
    m.push(d[i - 1]! * d[i]! <= 0 ? 0 : (w1 + w2) / (w1 / d[i - 1]! + w2 / d[i]!));
  }
  m.push(endSlope(h[n - 2]!, h[n - 3]!, d[n - 2]!, d[n - 3]!));
  return m;
}

/** Steepest slope at a point of the curve or between two [N]. */
export function steepestSlope(curve: Curve): number {
  const between = curve.slice(1).map(([strain, tension], i) => (tension - curve[i]![1]) / (strain - curve[i]![0]));
  return Math.max(...slopes(curve), ...between);
}

/** Slope with which the curve goes on beyond its last point [N]. */
export function finalSlope(curve: Curve): number {
  return slopes(curve).at(-1)!;
}

/** A last slope this close to that of the last chord is the same, but for rounding [-]. */
const SAME_SLOPE = 1e-9;

/**
 * The curve with a point more where it would go on less steeply than between its last two points. The end slope is drawn from three of them, and
 * comes close to nothing where a pull softens near its end; every load beyond the last point would then be told too low.
 */
export function straightOn(curve: Curve): Curve {
  const [before, last] = [curve.at(-2)!, curve.at(-1)!];
  const [strain, tension] = [last[0] - before[0], last[1] - before[1]];
  if (finalSlope(curve) >= (tension / strain) * (1 - SAME_SLOPE)) return curve;
  return [...curve, [last[0] + strain, last[1] + tension]];
}

/** Slow-pull tension at a strain [N]; zero at and below zero strain. */
export function tensionAt(curve: Curve, strain: number): number {
  if (strain <= 0) return 0;
  const m = slopes(curve);
  const last = curve.length - 1;
  const [endStrain, endTension] = curve[last]!;
  if (strain >= endStrain) return endTension + m[last]! * (strain - endStrain);
  let i = 0;
  while (strain > curve[i + 1]![0]) i++;
  const [e0, t0] = curve[i]!;
  const [e1, t1] = curve[i + 1]!;
  const h = e1 - e0;
  const u = (strain - e0) / h;
  const a = (1 + 2 * u) * (1 - u) ** 2 * t0 + u * u * (3 - 2 * u) * t1;
  return a + h * (u * (1 - u) ** 2 * m[i]! + u * u * (u - 1) * m[i + 1]!);
}

/** Strain at which the slow-pull curve carries a tension [-]; undefined when it never does. */
export function strainAt(curve: Curve, tension: number): number | undefined {
  if (tension <= 0) return 0;
  const last = curve.length - 1;
  const [endStrain, endTension] = curve[last]!;
  if (tension >= endTension) {
    const slope = slopes(curve)[last]!;
    return slope > 0 ? endStrain + (tension - endTension) / slope : tension === endTension ? endStrain : undefined;
  }
  let low = 0;
  let high = endStrain;
  // Bisection to the last bit: the curve rises, and this runs once per section, not in a loop over time.
  for (let i = 0; i < 100 && low < high; i++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (tensionAt(curve, middle) < tension) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
