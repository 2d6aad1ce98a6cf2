/** A ± for the load of every part: its governing what-if once more on another mesh. */
import { type Accuracy, type Recording, richardson, sameBreaks } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { partLoads, webbingLoads } from "./loads.ts";
import type { PartOutcome, WhatIf } from "./outcome.ts";
import type { RigStrengths } from "./rigStrengths.ts";
import { type CatchTimes, otherMesh, runWith } from "./runWhatIf.ts";

/**
 * Runs what governs on both meshes; returns ± per part id [N]. A part whose second run fails, or parts other things than
 * the first, gets none: it is then not known how far its load may be off. Yields the share done.
 */
export function* loadUncertainty(
  rig: Rig,
  parts: readonly PartOutcome[],
  whatIfs: readonly WhatIf[],
  strengths: RigStrengths,
  accuracy: Accuracy,
): Generator<number, ReadonlyMap<string, number>, void> {
  const governing = [...new Set(parts.map((part) => part.whatIf))];
  const found = new Map<string, number>();
  const catches: Record<Accuracy, CatchTimes> = { quick: new Map(), standard: new Map(), fine: new Map() };
  for (const [g, index] of governing.entries()) {
    const runs: Recording[] = [];
    for (const [m, mesh] of [accuracy, otherMesh(accuracy)].entries()) {
      const work = runWith(rig, whatIfs[index]!, strengths, { accuracy: mesh }, catches[mesh]);
      let step = work.next();
      for (; !step.done; step = work.next()) yield (g + (m + step.value) / 2) / governing.length;
      if (step.value.recording && step.value.outcome.ok) runs.push(step.value.recording);
    }
    const [first, second] = runs;
    if (!first || !second || !sameBreaks(first, second)) continue;
    const ratio = first.mesh.size / second.mesh.size;
    for (const part of parts.filter((one) => one.whatIf === index)) {
      const [a, b] = [first, second].map((run) => loadOf(part, rig, run, strengths));
      if (a !== undefined && b !== undefined) found.set(part.id, richardson(a, b, ratio));
    }
  }
  return found;
}

/** Webbing: the largest load within a metre of the place that governs, which no mesh meets exactly. */
const NEIGHBOURHOOD = 1;

function loadOf(part: PartOutcome, rig: Rig, run: Recording, strengths: RigStrengths): number | undefined {
  const zones = strengths.parts.find((one) => one.id === part.id)?.zones;
  if (!zones || !part.weakest) return partLoads(rig, run).get(part.id);
  const [peaks, length] =
    part.id === "main"
      ? [run.elementPeaks.main, strengths.mainLength]
      : [run.elementPeaks.backup, strengths.backupLength];
  const near = webbingLoads(peaks, zones, length).filter((one) => Math.abs(one.at - part.weakest!.at) <= NEIGHBOURHOOD);
  return near.length === 0 ? undefined : Math.max(...near.map((one) => one.load));
}
