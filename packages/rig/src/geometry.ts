/** Lengths and heights that follow from a rig, before anything moves. */
import { type Curve, strainAt } from "./curve.ts";
import type { Rig } from "./rig.ts";

/** Straight distance between the anchors [m]. */
export function chord(rig: { readonly span: number; readonly rise: number }): number {
  return Math.hypot(rig.span, rig.rise);
}

interface Piece {
  readonly curve: Curve;
  /** Natural length [m]; absent: takes up the rest. */
  readonly length?: number | undefined;
}

/**
 * Natural lengths of sections end to end [m] such that, straight and weightless between points `distance` apart, they
 * carry `tension` on their slow-pull curves: Σ Lᵢ·(1 + εᵢ(T)) = distance. Exactly one section has no length of its own.
 * Undefined when the others already reach too far, or when a curve never carries the tension.
 */
export function naturalLengths(distance: number, tension: number, pieces: readonly Piece[]): number[] | undefined {
  const strains = pieces.map((piece) => strainAt(piece.curve, tension));
  if (strains.some((strain) => strain === undefined)) return undefined;
  const free = pieces.findIndex((piece) => piece.length === undefined);
  if (free < 0) return undefined;
  const taken = pieces.reduce((sum, piece, i) => sum + (piece.length ?? 0) * (1 + strains[i]!), 0);
  const rest = (distance - taken) / (1 + strains[free]!);
  return rest > 0 ? pieces.map((piece) => piece.length ?? rest) : undefined;
}

function known(lengths: number[] | undefined, line: string): number[] {
  if (!lengths) throw new Error(`The sections of the ${line} do not fit; was this rig read by readRig?`);
  return lengths;
}

/** Natural length of each main-line section, from A to B [m]. */
export function mainSectionLengths(rig: Rig): number[] {
  const pieces = rig.main.sections.map((section) => ({ curve: section.stock.curve, length: section.length }));
  return known(naturalLengths(chord(rig), rig.main.pretension, pieces), "main line");
}

/** Natural length of the main line [m]. */
export function mainNaturalLength(rig: Rig): number {
  return mainSectionLengths(rig).reduce((sum, length) => sum + length, 0);
}

/** Natural length of the backup [m]; zero when there is none. */
export function backupNaturalLength(rig: Rig): number {
  return rig.backup ? chord(rig) * (1 + rig.backup.slack) : 0;
}

/** Natural length of each backup section, from A to B [m]; empty when there is none. */
export function backupSectionLengths(rig: Rig): number[] {
  if (!rig.backup) return [];
  const pieces = rig.backup.sections.map((section) => ({ curve: section.stock.curve, length: section.length }));
  return known(naturalLengths(backupNaturalLength(rig), 0, pieces), "backup");
}

/** Height of the straight line between the anchors at a distance along the span, relative to anchor A [m]. */
export function chordHeight(rig: { readonly span: number; readonly rise: number }, x: number): number {
  return (rig.rise * x) / rig.span;
}

/** Height of the ground at a distance along the span, relative to anchor A [m]; level beyond the profile's ends. */
export function groundHeight(rig: Pick<Rig, "ground">, x: number): number {
  const points = rig.ground;
  const after = points.findIndex(([px]) => px >= x);
  if (after < 0) return points.at(-1)![1];
  if (after === 0) return points[0]![1];
  const [x0, z0] = points[after - 1]!;
  const [x1, z1] = points[after]!;
  return z0 + ((z1 - z0) * (x - x0)) / (x1 - x0);
}

/** Greatest height of the ground between two places along the span [m]; `from` ≤ `to` [m]. */
export function highestGround(rig: Pick<Rig, "ground">, from: number, to: number): number {
  const between = rig.ground.flatMap(([x, height]) => (x > from && x < to ? [height] : []));
  return Math.max(groundHeight(rig, from), groundHeight(rig, to), ...between);
}

/**
 * Force in each leg of an equally loaded two-leg anchor over the force on the anchor [-], for the angle between the legs
 * [rad]: 1 / (2 cos(θ/2)). One half at 0, one at 120°, without bound towards 180°.
 */
export function legForceFactor(angle: number): number {
  return 1 / (2 * Math.cos(angle / 2));
}
