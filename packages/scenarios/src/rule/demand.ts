/** What the runs of events ask for: E, the load that 95 % of such falls stay under. */
import type { PartId } from "@secondline/rig";
import type { PartStrength } from "@secondline/strength";
import type { EventClass } from "../events/eventKind.ts";
import { classOf, takenAway, type WhatIf } from "../events/registry.ts";
import type { GoodRun } from "../facts/runFacts.ts";
import { familiesOf } from "../scatter/families.ts";
import { INPUT_IDS } from "../scatter/inputs.ts";
import {
  type EventDraws,
  type FromNeighbours,
  isDrawn,
  type Level,
  levelOf,
  type Scatter,
  scatterOf,
  scatterOfFamily,
} from "../scatter/levels.ts";
import { type KnownValue, surfaceThrough } from "../scatter/surface.ts";
import { type Utilisation, utilisation } from "./utilisation.ts";

/** An event with its runs. */
export interface EventRuns {
  /** Index of the event in the outcome. */
  readonly index: number;
  readonly event: WhatIf;
  readonly runs: readonly GoodRun[];
  /** For every run the deviates of its drawn inputs; empty: the event as it stands. */
  readonly deviates: readonly (readonly number[])[];
}

/** With so many draws or more, an event is judged by its draws alone, without the run by which it was chosen [-]. */
export const ENOUGH_DRAWS = 4;

/** A quantity of every event that has it, without the runs by which an event was chosen. */
interface Measured {
  readonly of: EventRuns;
  readonly draws: EventDraws;
  /** The runs that count, in the order of the draws. */
  readonly runs: readonly GoodRun[];
}

/** A run, and the deviates of what was drawn in it. */
interface RunOf {
  readonly run: GoodRun;
  readonly deviates: readonly number[];
}

const runsOf = ({ runs, deviates }: EventRuns): readonly RunOf[] =>
  runs.map((run, i) => ({ run, deviates: deviates[i]! }));

/** The runs of an event in which something was drawn. */
export const drawsOf = (event: EventRuns): readonly RunOf[] =>
  runsOf(event).filter(({ deviates }) => deviates.length > 0);

/** The runs that may tell how large a load is: the one that chose an event does not, once there are draws. */
function countedRuns(event: EventRuns): readonly RunOf[] {
  const drawn = drawsOf(event);
  return drawn.length >= ENOUGH_DRAWS ? drawn : runsOf(event);
}

/** `value` gets to know whether the run drew something. */
export function measuredRuns(
  events: readonly EventRuns[],
  value: (run: GoodRun, drawn: boolean) => number | undefined,
  scale?: (runs: readonly GoodRun[]) => number,
): readonly Measured[] {
  return events.flatMap((of): Measured[] => {
    const counted = countedRuns(of);
    const values = counted.map((one) => value(one.run, one.deviates.length > 0));
    if (values.every((one) => one === undefined)) return [];
    const runs = counted.map(({ run }) => run);
    const deviates = counted.map((one) => one.deviates);
    const draws = { values: values.map((one) => one ?? 0), deviates, ...(scale ? { scale: scale(runs) } : {}) };
    return [{ of, draws, runs }];
  });
}

/**
 * Of the events that were not drawn, what they and their neighbours say together: the run by which an event stands out among many is
 * often a lucky one.
 */
function fromNeighbours(ones: readonly Measured[], { chance }: Scatter): ReadonlyMap<Measured, FromNeighbours> {
  const inLogs = ones.filter(({ draws }) => draws.scale === undefined && draws.values.every((value) => value > 0));
  return new Map(
    familiesOf(inLogs, ({ of }) => of.event).flatMap((rows) => {
      const known = rows.map(({ one, at }): KnownValue => {
        const { values } = one.draws;
        const value = values.reduce((sum, each) => sum + Math.log(each), 0) / values.length;
        return { at, value, noise: chance / values.length };
      });
      const open = rows.filter(({ one }) => !isDrawn(one.draws));
      if (open.length === 0) return [];
      const surface = surfaceThrough(known);
      return open.map(({ one, at }) => [one, surface(at)] as const);
    }),
  );
}

/** Walkers who stand beside an end that fails, say, are thrown about more than those who hang: each family scatters in its own way. */
function familyScatters(ones: readonly Measured[], scatter: Scatter): ReadonlyMap<Measured, Scatter> {
  return new Map(
    familiesOf(ones, ({ of }) => of.event).flatMap((rows) => {
      const events = rows.map(({ one }) => one.draws);
      const own = scatterOfFamily(events, scatter);
      return rows.map(({ one }) => [one, own] as const);
    }),
  );
}

export interface EventLevel {
  readonly of: EventRuns;
  readonly level: Level;
  readonly runs: readonly GoodRun[];
  /** The quantity in each run, and whether the runs drew something. */
  readonly values: readonly number[];
  readonly drawn: boolean;
}

/** The 95 % value of a quantity in every event; events of one class tell each other how it scatters. */
export function levelsOf(all: readonly Measured[]): readonly EventLevel[] {
  const classes = new Map<EventClass, Measured[]>();
  for (const one of all) {
    const name = classOf(one.of.event);
    classes.set(name, [...(classes.get(name) ?? []), one]);
  }
  return [...classes.values()].flatMap((ones) => {
    const scatter = scatterOf(
      ones.map(({ draws }) => draws),
      INPUT_IDS.length,
    );
    const neighbours = fromNeighbours(ones, scatter);
    const families = familyScatters(ones, scatter);
    return ones.map((one) => {
      const level = levelOf(one.draws, families.get(one) ?? scatter, neighbours.get(one));
      return { of: one.of, level, runs: one.runs, values: one.draws.values, drawn: isDrawn(one.draws) };
    });
  });
}

/** The demand of an event on a part. */
export interface Demand extends Utilisation {
  readonly class: EventClass;
  readonly event: number;
  /** E [N], and its 95 % interval. */
  readonly demand: number;
  readonly low: number;
  readonly high: number;
  /** The value by which the events are ranked [N]. */
  readonly rank: number;
  /** Middle of the loads of the runs [N]; `load` is the largest load. */
  readonly middle: number;
  /** Number of runs that the demand rests on. */
  readonly runs: number;
  /** For each run, load over strength at the place where this ratio is largest [-]; 0: the run did not load the part. */
  readonly shares: readonly number[];
  /** Whether the runs drew something. */
  readonly drawn: boolean;
}

/** The demands on a part, one per event that loads the part and does not take it away. On webbing the place that is loaded most counts. */
export function demandsOn(part: PartStrength, events: readonly EventRuns[], length: number): readonly Demand[] {
  const here = events.filter(({ event }) => !takenAway(event).includes(part.id as PartId));
  const of = (run: GoodRun) => utilisation(part, run, length);
  return levelsOf(measuredRuns(here, (run) => of(run)?.share)).map(
    ({ of: { event, index }, level, runs, values, drawn }): Demand => {
      const worst = runs.flatMap((run) => of(run) ?? []).reduce((a, b) => (b.share > a.share ? b : a));
      const { strength5 } = worst;
      return {
        ...worst,
        class: classOf(event),
        event: index,
        demand: level.value * strength5,
        low: level.low * strength5,
        high: level.high * strength5,
        rank: level.rank * strength5,
        middle: level.middle * strength5,
        runs: level.draws,
        shares: values,
        drawn,
      };
    },
  );
}
