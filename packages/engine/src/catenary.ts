/**
 * The inextensible catenary between two points in a vertical plane, for starting shapes: (Irvine, Cable Structures, 1981,
 * ch. 1). Heights z up, x along.
 */

/** Parameter a = H/w of a catenary of a length over a horizontal and a vertical distance; length must exceed the chord [m]. */
export function catenaryParameter(across: number, up: number, length: number): number {
  // √(length² − up²) = 2a·sinh(across/2a), with s = across/2a: sinh(s)/s = ratio.
  const ratio = Math.sqrt(length * length - up * up) / across;
  let s = ratio < 3 ? Math.sqrt(6 * (ratio - 1)) : Math.log(2 * ratio) + Math.log(Math.log(2 * ratio));
  for (let i = 0; i < 60; i++) {
    const f = Math.sinh(s) / s - ratio;
    const slope = (Math.cosh(s) - Math.sinh(s) / s) / s;
    const next = Math.max(s - f / slope, s / 4);
    if (Math.abs(next - s) <= 1e-14 * s) break;
    s = next;
  }
  return across / (2 * s);
}

/**
 * Points of the catenary at fractions of its length, from (0, 0) to (across, up). A length not over the chord gives the
 * straight line. `across` may be small but not zero.
 */
export function catenaryPoints(across: number, up: number, length: number, fractions: readonly number[]): [number, number][] {
  const chord = Math.hypot(across, up);
  if (length <= chord * (1 + 1e-9)) return fractions.map((f) => [f * across, f * up]);
  const a = catenaryParameter(across, up, length);
  // x of the lowest point, from the height difference.
  const lowest = across / 2 - a * Math.asinh(up / (2 * a * Math.sinh(across / (2 * a))));
  const startSlope = Math.sinh(-lowest / a);
  const startHeight = Math.cosh(-lowest / a);
  return fractions.map((f) => {
    const slope = startSlope + (f * length) / a;
    const x = lowest + a * Math.asinh(slope);
    return [x, a * (Math.sqrt(1 + slope * slope) - startHeight)];
  });
}

/** Horizontal pull over weight per length, H/w, of a bay; infinite when the length does not exceed the chord [m]. */
export function bayTension(across: number, up: number, length: number): number {
  return length <= Math.hypot(across, up) * (1 + 1e-12) ? Number.POSITIVE_INFINITY : catenaryParameter(across, up, length);
}
