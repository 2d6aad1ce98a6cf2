/** The numbers of a fall: in a table of its own, and in a row of a list of what-ifs. */
import type { WhatIfOutcome } from "@secondline/scenarios";
import { quantity } from "@secondline/words";
import { sayVerdict } from "@secondline/words/page/verdict";
import type { ShownRun } from "../inHand/state.ts";

export interface FallNumber {
  readonly name: string;
  readonly now: string;
  /** The same number on the other mesh, if it was asked for. */
  readonly beside: string | undefined;
  /** The number in the run before, if it was another. */
  readonly before: string | undefined;
}

const PEAKS = [
  ["leash", sayVerdict("keyNumbers.harness")],
  ["mainA", sayVerdict("keyNumbers.mainA")],
  ["mainB", sayVerdict("keyNumbers.mainB")],
  ["backupA", sayVerdict("keyNumbers.backupA")],
  ["backupB", sayVerdict("keyNumbers.backupB")],
] as const;
type Signal = (typeof PEAKS)[number][0];

/** Peaks and drop of a fall; what it does not have is left out. */
export function fallNumbers(shown: ShownRun, previous: ShownRun | undefined): readonly FallNumber[] {
  const peak = (run: ShownRun | undefined, signal: Signal) =>
    run?.outcome.peaks && quantity.load(run.outcome.peaks[signal]);
  const drop = (run: ShownRun | undefined) =>
    run?.outcome.drop === undefined ? undefined : quantity.drop(run.outcome.drop);
  const row = (
    name: string,
    now: string | undefined,
    was: string | undefined,
    beside?: string,
  ): readonly FallNumber[] => (now === undefined ? [] : [{ name, now, beside, before: was === now ? undefined : was }]);
  return [
    ...PEAKS.flatMap(([signal, name]) =>
      row(name, peak(shown, signal), peak(previous, signal), onOtherMesh(shown, signal)),
    ),
    ...row(sayVerdict("keyNumbers.drop"), drop(shown), drop(previous)),
  ];
}

const onOtherMesh = ({ otherMesh }: ShownRun, signal: Signal): string | undefined =>
  otherMesh && sayVerdict(`keyNumbers.mesh.${otherMesh.accuracy}`, { load: quantity.load(otherMesh.peaks[signal]) });

/** Drop, pull and height over ground, for a row of a list. */
export function rowNumbers({ drop, peaks, feetClearance, lostBecause }: WhatIfOutcome): readonly string[] {
  return [
    ...(drop === undefined || lostBecause ? [] : [sayVerdict("whatIfList.down", { drop: quantity.drop(drop) })]),
    ...(peaks ? [sayVerdict("whatIfList.harness", { pull: quantity.load(peaks.leash) })] : []),
    ...(feetClearance === undefined || feetClearance <= 0
      ? []
      : [sayVerdict("whatIfList.underFeet", { height: quantity.height(feetClearance) })]),
  ];
}
