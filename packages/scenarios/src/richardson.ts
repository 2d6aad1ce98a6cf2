/** How far a number may be from that of an endlessly fine mesh, from two meshes (Richardson extrapolation). */
import type { Recording } from "@secondline/engine";

/**
 * Order of convergence taken for granted [-]. The engine converges with order two where everything is smooth; a slack line
 * coming taut is not smooth, so the cautious order one is taken.
 */
const ORDER = 1;

/**
 * Distance of the value on the first mesh from the extrapolated one [same unit]. `ratio`: element size of the first mesh
 * over that of the second; must not be 1.
 */
export function richardson(first: number, second: number, ratio: number): number {
  if (!(ratio > 0) || Math.abs(ratio - 1) < 0.05)
    throw new RangeError(`Two meshes of ratio ${ratio} say nothing about each other.`);
  return Math.abs((first - second) / (1 - ratio ** -ORDER));
}

export const PEAKS = ["leash", "mainA", "mainB", "backupA", "backupB"] as const;
export type PeakName = (typeof PEAKS)[number];

/** ± of the filtered peaks of `first`, from a run of the same problem on another mesh [N]. */
export function peakUncertainty(first: Recording, other: Recording): Readonly<Record<PeakName, number>> {
  const ratio = first.mesh.size / other.mesh.size;
  const of = (name: PeakName) => richardson(first.peaks[name].cfc60, other.peaks[name].cfc60, ratio);
  return { leash: of("leash"), mainA: of("mainA"), mainB: of("mainB"), backupA: of("backupA"), backupB: of("backupB") };
}
