/** What becomes of the walker over all events: whether something catches, and how near the ground is. */

import type { GoodRun } from "../facts/runFacts.ts";
import { type EventLevel, type EventRuns, levelsOf, measuredRuns } from "./demand.ts";

interface Lowest {
  readonly event: number;
  /** The 95 % interval of the value, the worse end last [m]. */
  readonly interval: readonly [better: number, worse: number];
}

export interface FallFacts {
  /** Events in which some run ends with nothing holding the walker, whether or not there is ground below. */
  readonly notCaught: readonly number[];
  /** Events in which some run brings the feet to the ground. */
  readonly onGround: readonly number[];
  /** Height of the feet that 95 % of such falls keep above the ground in the worst event; absent when no ground is known [m]. */
  readonly leastFeet?: Lowest & { readonly height: number };
  /** What 95 % of such falls stay under in the worst event [m]. */
  readonly deepest?: Lowest & { readonly drop: number };
}

/** Among events that bring the feet to the ground the one that brings the walker `lowest`; if that is none of them, the first. */
export const groundEvent = (onGround: readonly number[], lowest: number | undefined): number | undefined =>
  lowest !== undefined && onGround.includes(lowest) ? lowest : onGround[0];

export const meetsGround = (run: GoodRun): boolean =>
  run.lostBecause === "ground" || (run.feetClearance !== undefined && run.feetClearance <= 0);

/** A run that ends on the ground says nothing of what would have held the walker below it. */
export const losesWalker = (run: GoodRun): boolean => run.caughtBy === "nothing" && run.lostBecause !== "ground";

const MOST_METRES_AT_REST = 0.1;
const meanDrop = (runs: readonly GoodRun[]) =>
  Math.max(MOST_METRES_AT_REST, runs.reduce((sum, { drop }) => sum + drop, 0) / runs.length);

export const dropLevels = (events: readonly EventRuns[]): readonly EventLevel[] =>
  levelsOf(measuredRuns(events, ({ drop }) => Math.max(MOST_METRES_AT_REST, drop)));

/**
 * Of the feet, how far below the ground: a height may be near 0, so that its differences are told in drops. `nearby`: of a
 * run in which no place was drawn the nearest ground to the side counts. Where nothing is drawn at all it must; a whole search draws the lowest events.
 */
export const depthLevels = (events: readonly EventRuns[], nearby = false): readonly EventLevel[] =>
  levelsOf(
    measuredRuns(
      events.filter(({ runs }) => runs.every(({ feetClearance }) => feetClearance !== undefined)),
      ({ feetClearance, feetNearby }, drawn) => -(nearby && !drawn ? (feetNearby ?? feetClearance!) : feetClearance!),
      meanDrop,
    ),
  );

const worstOf = (levels: readonly EventLevel[]): EventLevel | undefined =>
  levels.reduce<EventLevel | undefined>((a, b) => (a && a.level.rank >= b.level.rank ? a : b), undefined);

export function fallFacts(events: readonly EventRuns[], nearby = false): FallFacts {
  const where = (is: (run: GoodRun) => boolean) => events.filter(({ runs }) => runs.some(is)).map(({ index }) => index);
  const depth = worstOf(depthLevels(events, nearby));
  const drop = worstOf(dropLevels(events));
  const leastFeet = depth && {
    event: depth.of.index,
    height: -depth.level.value,
    interval: [-depth.level.low, -depth.level.high] as const,
  };
  const deepest = drop && {
    event: drop.of.index,
    drop: drop.level.value,
    interval: [drop.level.low, drop.level.high] as const,
  };
  return {
    notCaught: where(losesWalker),
    onGround: where(meetsGround),
    ...(leastFeet ? { leastFeet } : {}),
    ...(deepest ? { deepest } : {}),
  };
}
