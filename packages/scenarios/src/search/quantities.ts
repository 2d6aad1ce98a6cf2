/** What the search looks for the worst of: each part's share of its strength in each class of events, the drop, and the ground. */
import type { PartId, Rig } from "@secondline/rig";
import { EVENT_CLASSES, type EventClass } from "../events/eventKind.ts";
import { classOf, takenAway, type WhatIf } from "../events/registry.ts";
import type { GoodRun } from "../facts/runFacts.ts";
import { drawsOf, type EventRuns } from "../rule/demand.ts";
import { requiredFactors } from "../rule/margins.ts";
import { judgedParts, lengthOf, utilisation } from "../rule/utilisation.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";

export interface Quantity {
  readonly name: string;
  /** A positive number that is the worse the larger it is; undefined where the run, or the event, has none. */
  readonly of: (run: GoodRun, event: WhatIf) => number | undefined;
  /** ln of the quantity from which on it is worth looking for a worse event. */
  readonly mattersFrom: number;
}

/** A share of what a part holds below this is no load that a search is worth making for [-]. */
const LEAST_LOAD_SHARE = 0.01;
/** A part whose margin is so many times the required one is not worth a search for worse events [-]. */
const LEAST_SEARCHED_SHARE = 0.45;
/** About the 95 % value, E, over the middle, for which single runs stand [-]. */
const E_OVER_MIDDLE = 1.2;
/** Feet that stay higher above the ground in single runs are not looked at more closely [m]. */
export const NEAR_GROUND = 10;

/** So much nearer to the ground is as much worse as a load e times as large [m]. */
const CLEARANCE_SCALE = 10;

export function quantitiesOf(rig: Rig, strengths: RigStrengths): readonly Quantity[] {
  const required = requiredFactors(rig);
  const parts = judgedParts(rig, strengths).flatMap((part) => {
    const length = lengthOf(strengths, part);
    return EVENT_CLASSES.map(
      (name: EventClass): Quantity => ({
        name: `${part.id} ${name}`,
        mattersFrom: Math.log(LEAST_SEARCHED_SHARE / E_OVER_MIDDLE),
        of(run, event) {
          if (classOf(event) !== name || takenAway(event).includes(part.id as PartId)) return undefined;
          const value = (utilisation(part, run, length)?.share ?? 0) * required[name];
          return value < LEAST_LOAD_SHARE ? undefined : value;
        },
      }),
    );
  });
  return [
    ...parts,
    { name: "drop", mattersFrom: Number.NEGATIVE_INFINITY, of: ({ drop }) => Math.max(0.1, drop) },
    {
      name: "feet",
      mattersFrom: -NEAR_GROUND / CLEARANCE_SCALE,
      of: ({ feetClearance }) => (feetClearance === undefined ? undefined : Math.exp(-feetClearance / CLEARANCE_SCALE)),
    },
  ];
}

/** Mean of ln of a quantity over the draws of an event, or over the run of the event as it stands. */
export function meanOf(
  one: EventRuns,
  quantity: Quantity,
): { readonly value: number; readonly runs: number } | undefined {
  const drawn = drawsOf(one).map(({ run }) => run);
  const values = (drawn.length > 0 ? drawn : one.runs).flatMap((run) => quantity.of(run, one.event) ?? []);
  if (values.length === 0) return undefined;
  return { value: values.reduce((sum, value) => sum + Math.log(value), 0) / values.length, runs: values.length };
}
