/** Forces of a run over time, small enough for a plot. */

/** Forces over time: in the leash, in either line at its ends, and on an anchor as a whole (main line and backup together). */
export const TRACE_LINES = ["leash", "mainA", "mainB", "backupA", "backupB", "anchorA", "anchorB"] as const;
export type TraceLine = (typeof TRACE_LINES)[number];

/**
 * Force over time, thinned out for a small plot without losing a peak: per bin the least and the largest of the CFC 60
 * signal, alternating [N]. Bins of equal length over `duration` [s].
 */
export interface Trace extends Readonly<Record<TraceLine, readonly number[]>> {
  readonly duration: number;
  readonly bins: number;
}

/** The least and the largest force of `draws` draws in every bin; the band is as long as the shortest draw. */
export interface TraceBand extends Trace {
  readonly draws: number;
}
