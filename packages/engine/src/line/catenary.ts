/**
 * The inextensible catenary between two points in a vertical plane, for first guesses (Irvine, Cable Structures, 1981, ch. 1).
 */
import { cosh, hypot, log, sinh } from "../portable/index.ts";

/** Parameter a = H/w of a catenary of a length over a horizontal and a vertical distance; length must exceed the chord [m]. */
function catenaryParameter(across: number, up: number, length: number): number {
  // √(length² − up²) = 2a·sinh(across/2a), with s = across/2a: sinh(s)/s = ratio.
  const ratio = Math.sqrt(length * length - up * up) / across;
  let s = ratio < 3 ? Math.sqrt(6 * (ratio - 1)) : log(2 * ratio) + log(log(2 * ratio));
  for (let i = 0; i < 60; i++) {
    const f = sinh(s) / s - ratio;
    const slope = (cosh(s) - sinh(s) / s) / s;
    const next = Math.max(s - f / slope, s / 4);
    if (Math.abs(next - s) <= 1e-14 * s) break;
    s = next;
  }
  return across / (2 * s);
}

/** Horizontal pull over weight per length, H/w, of a bay; infinite when the length does not exceed the chord [m]. */
export function bayTension(across: number, up: number, length: number): number {
  return length <= hypot(across, up) * (1 + 1e-12) ? Number.POSITIVE_INFINITY : catenaryParameter(across, up, length);
}
