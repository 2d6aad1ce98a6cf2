/** What the runs of one event ask for: E, the load that 95 % of such falls stay under. */
import type { PartId } from "@secondline/rig";
import type { PartStrength } from "@secondline/strength";
import type { EventClass } from "../events/eventKind.ts";
import { classOf, takenAway, type WhatIf } from "../events/registry.ts";
import type { GoodRun } from "../run/runFacts.ts";
import { type Utilisation, utilisation } from "./utilisation.ts";

/**
 * Until loads are distributions over what scatters, E is so many times the largest load of an event's runs, and verdicts are
 * provisional [-]. In ensembles of slightly different runs single loads scatter by 5 to 15 %: 1.28 is a lognormal 95 % value over a
 * median at 15 %, for an event that was run once.
 */
export const PROVISIONAL_FACTOR = 1.28;

/** An event with the runs that were made of it. */
export interface EventRuns {
  /** Index of the event in the outcome. */
  readonly index: number;
  readonly event: WhatIf;
  readonly runs: readonly GoodRun[];
}

/** The demand of an event on a part: the worst of its runs, as E. */
export interface Demand extends Utilisation {
  readonly class: EventClass;
  readonly event: number;
  /** E [N]: `load` times the provisional factor. */
  readonly demand: number;
  /** Runs that it rests on. */
  readonly runs: number;
}

/** Undefined where the event takes the part away or no run of it loads the part. */
export function demandOn(part: PartStrength, { index, event, runs }: EventRuns, length: number): Demand | undefined {
  if (takenAway(event).includes(part.id as PartId)) return undefined;
  let worst: Utilisation | undefined;
  for (const run of runs) {
    const found = utilisation(part, run, length);
    if (found && (!worst || found.share > worst.share)) worst = found;
  }
  if (!worst) return undefined;
  const demand = worst.load * PROVISIONAL_FACTOR;
  return { ...worst, class: classOf(event), event: index, demand, runs: runs.length };
}

/** E of the pull on the person in an event [N]. */
export const pullOf = ({ runs }: EventRuns): number =>
  PROVISIONAL_FACTOR * Math.max(...runs.map((run) => run.peaks.leash));
