import type { Recording } from "@secondline/engine";

/** Largest tension of the run in any line or the leash, as a load cell reports it [N]. */
export function largestTension(recording: Recording): number {
  const { leash, mainA, mainB, backupA, backupB } = recording.peaks;
  return Math.max(leash.cfc60, mainA.cfc60, mainB.cfc60, backupA.cfc60, backupB.cfc60);
}
