/**
 * A chain of elastic pieces with their mass lumped at the joints, hung between two points: the exact equilibrium of the
 * discrete line, by shooting. With the horizontal pull H and the first piece's vertical pull V known, every piece follows from
 * the one before; two unknowns are found by Newton's method from the inextensible catenary.
 */

import { GRAVITY } from "../constants.ts";
import { bayTension } from "../line/catenary.ts";
import { slopeAt, strainAt, type TensionCurve } from "../line/tensionCurve.ts";
import { hypot } from "../portable/index.ts";

export interface LinePiece {
  /** Natural length [m]. */
  readonly length: number;
  readonly curve: TensionCurve;
  /** Mass per natural length [kg/m]. */
  readonly mass: number;
}

/** A chain at rest: joints between its pieces as [along, up] from the first point [m], and the pull of its first piece [N]. */
export interface HungChain {
  readonly joints: [number, number][];
  readonly along: number;
  readonly up: number;
}

/** Joints between the pieces as [along, up] from the first point [m]; a straight line where no equilibrium is found. */
export function hangPieces(across: number, up: number, pieces: readonly LinePiece[]): [number, number][] {
  return hangChain(across, up, pieces)?.joints ?? straight(across, up, pieces);
}

/** The chain's equilibrium between two points; undefined where none is found. */
export function hangChain(across: number, up: number, pieces: readonly LinePiece[]): HungChain | undefined {
  const length = pieces.reduce((sum, piece) => sum + piece.length, 0);
  const weight = pieces.reduce((sum, piece) => sum + piece.mass * piece.length, 0) * GRAVITY;
  const chord = hypot(across, up);
  const slack = bayTension(across, up, length);
  let H = Number.isFinite(slack) ? (slack * weight) / length : 1;
  if (length < chord * (1 + 1e-6))
    H = Math.max(H, (pieces[0]!.curve.maxSlope * Math.max(0, chord / length - 1) * across) / chord);
  let V = (up * H) / across - 0.5 * weight;
  for (let i = 0; i < 60; i++) {
    const shot = shoot(H, V, pieces);
    const [mx, mz] = [across - shot.x, up - shot.z];
    if (hypot(mx, mz) < 1e-11 * Math.max(1, chord)) return { joints: shot.joints, along: H, up: V };
    const det = shot.xH * shot.zV - shot.xV * shot.zH;
    const dH = (mx * shot.zV - mz * shot.xV) / det;
    const dV = (mz * shot.xH - mx * shot.zH) / det;
    // A pull must stay a pull; a step that would more than halve it is shortened.
    const share = Math.min(1, dH < 0 ? (0.5 * H) / -dH : 1);
    H += share * dH;
    V += share * dV;
    if (!Number.isFinite(H + V)) break;
  }
  return undefined;
}

function straight(across: number, up: number, pieces: readonly LinePiece[]): [number, number][] {
  const length = pieces.reduce((sum, piece) => sum + piece.length, 0);
  let done = 0;
  return pieces.slice(0, -1).map((piece) => {
    done += piece.length / length;
    return [done * across, done * up];
  });
}

/** End point of the chain and its derivatives by H and V. */
function shoot(H: number, V: number, pieces: readonly LinePiece[]) {
  let [x, z, xH, xV, zH, zV] = [0, 0, 0, 0, 0, 0];
  let vertical = V;
  const joints: [number, number][] = [];
  for (const [k, piece] of pieces.entries()) {
    const T = hypot(H, vertical);
    const strain = strainAt(piece.curve, T);
    const now = piece.length * (1 + strain);
    const [c, s] = [H / T, vertical / T];
    const grow = piece.length / Math.max(slopeAt(piece.curve, strain), 1e-9);
    x += now * c;
    z += now * s;
    // d(now·(H, V)/T): stretch along the piece, turning across it.
    xH += grow * c * c + (now / T) * s * s;
    zV += grow * s * s + (now / T) * c * c;
    xV += (grow - now / T) * c * s;
    zH += (grow - now / T) * c * s;
    const next = pieces[k + 1];
    if (!next) break;
    joints.push([x, z]);
    vertical += 0.5 * GRAVITY * (piece.mass * piece.length + next.mass * next.length);
  }
  return { x, z, xH, xV, zH, zV, joints };
}
