/** A ± for the load of every part: its governing what-if once more on another mesh, and where that differs much once more on its own. */
import { type Accuracy, doubtful, plusMinus, type Recording, sameBreaks } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { partLoads, webbingLoads } from "./loads.ts";
import type { PartOutcome, WhatIf } from "./outcome.ts";
import type { RigStrengths } from "./rigStrengths.ts";
import { type CatchTimes, otherMesh, runWith, twinOf } from "./runWhatIf.ts";

/** One of the ways in which a what-if is run again. */
interface Way {
  readonly rig: Rig;
  readonly accuracy: Accuracy;
  readonly catches: CatchTimes;
}

/** Runs a what-if one way; nothing where that fails. Yields the share done. */
function* recordingOf(
  { rig, accuracy, catches }: Way,
  whatIf: WhatIf,
  strengths: RigStrengths,
): Generator<number, Recording | undefined, void> {
  const { outcome, recording } = yield* runWith(rig, whatIf, strengths, { accuracy }, catches);
  return outcome.ok ? recording : undefined;
}

/**
 * Runs what governs again; returns ± per part id [N]. A part whose other runs fail, or part other things than
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
  const way = (of: Rig, mesh: Accuracy): Way => ({ rig: of, accuracy: mesh, catches: new Map() });
  // On either mesh, and where those differ much one that tells chance from mesh.
  const ways = [way(rig, accuracy), way(rig, otherMesh(accuracy)), way(twinOf(rig), accuracy)];
  for (const [g, index] of governing.entries()) {
    const run = function* (k: number): Generator<number, Recording | undefined, void> {
      const work = recordingOf(ways[k]!, whatIfs[index]!, strengths);
      let step = work.next();
      for (; !step.done; step = work.next()) yield (g + (k + step.value) / ways.length) / governing.length;
      return step.value;
    };
    const first = yield* run(0);
    const second = yield* run(1);
    if (!first || !second || !sameBreaks(first, second)) continue;
    const loads = parts
      .filter((part) => part.whatIf === index)
      .map((part) => ({ part, of: (run: Recording) => loadOf(part, rig, run, strengths) }));
    const isDoubtful = loads.some(({ of }) => doubtful(of(first) ?? 0, of(second) ?? 0));
    const third = isDoubtful ? yield* run(2) : undefined;
    if (isDoubtful && !(third && sameBreaks(first, third))) continue;
    const ratio = first.mesh.size / second.mesh.size;
    for (const { part, of } of loads) {
      const [a, b] = [of(first), of(second)];
      if (a !== undefined && b !== undefined) found.set(part.id, plusMinus(a, b, ratio, third && of(third)));
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
