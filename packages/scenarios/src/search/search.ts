/**
 * The search for the worst events of a rig. It decides which runs are to be made and makes none itself: it hands out orders and
 * takes results, so that one thread or many can make them, in whatever order they finish. The same rig gives the same answer.
 *
 * 1. Every event of the set once. 2. What follows when a part that keeps too little gives way. 3. Of every part the events that
 * ask most of it, and those that bring the walker lowest, again under small shifts. 4. What follows, once more, where those have
 * brought a part below its factor.
 */
import type { Accuracy } from "@secondline/engine";
import type { PartId } from "@secondline/rig";
import type { Assessed } from "../assessment/assessment.ts";
import { leavesSomething } from "../events/givesWay.ts";
import { classOf, missingIn, type WhatIf, whatIfKey, whatIfSet } from "../events/registry.ts";
import type { Outcome } from "../facts/outcome.ts";
import { type RigStrengths, rigStrengths } from "../rigStrengths.ts";
import type { EventRuns } from "../rule/demand.ts";
import { demandShare, demandsOn, keptShare, type PartMargins, partMargins } from "../rule/margins.ts";
import { judgedParts, lengthOf } from "../rule/utilisation.ts";
import type { RunOrder, RunResult } from "../run/runFacts.ts";
import { conclude, staticsOf } from "./conclude.ts";
import { DRAWS } from "./draws.ts";
import { RunBook, type Wanted } from "./runBook.ts";

export interface SearchOptions {
  readonly accuracy: Accuracy;
  /** What to run; default: the whole set of the rig, or its few when `size` is "quick". */
  readonly whatIfs?: readonly WhatIf[];
  readonly size?: "quick" | "full";
  /** Run the worst events on another mesh too, as one more draw. */
  readonly estimate?: boolean;
  /** Keep thinned-out forces of every event, for plots. */
  readonly traces?: boolean;
  /** Tell what is known while the search goes on. */
  readonly tellSoFar?: boolean;
}

/** What the search asks for next. */
export interface Round {
  readonly orders: readonly RunOrder[];
  /** Runs made so far, and how many it looks like there will be. */
  readonly made: number;
  readonly expected: number;
  /** How many what-ifs the whole set has. */
  readonly of: number;
  /** Works out what is known so far; there once anything is. */
  readonly soFar?: () => Outcome;
}

/** Orders handed out at once: enough for several threads, few enough that what is found is soon told. */
const ROUND = 24;
/** How many of the worst events of a part are repeated. */
const WORST = 3;
/** Without repetitions, about so many more runs are to come per event of the set [-]. */
const REPEATED_SHARE = 1.6;

export const otherMesh = (accuracy: Accuracy): Accuracy => (accuracy === "fine" ? "standard" : "fine");

/** The outcome, and the runs that it rests on: a take-down date asks them again on later days. */
export interface Found {
  readonly outcome: Outcome;
  readonly demands: readonly EventRuns[];
}

/** Yields rounds of orders; is handed their results, in the same order. */
export function* search(assessed: Assessed, options: SearchOptions): Generator<Round, Found, readonly RunResult[]> {
  const { rig } = assessed;
  const strengths = rigStrengths(rig, assessed.tests);
  const statics = staticsOf(rig, strengths);
  const set = whatIfSet({ rig, weakPlaces: strengths.weakPlaces, size: "full" });
  const seeds = options.whatIfs ?? seedsOf(assessed, options, strengths, set);
  const chosen = options.whatIfs !== undefined;
  const few = options.size === "quick" || chosen;
  const book = new RunBook(DRAWS, options.traces === true);
  const events: WhatIf[] = [...seeds];
  // Parts whose cause is itself a failure tell only what would follow.
  const told = new Set<string>();
  const counts = (index: number) => !told.has(whatIfKey(events[index]!));
  let repeated = false;
  let expected = Math.ceil(seeds.length * (few ? 1 : 1 + REPEATED_SHARE));
  const concluded = (final: boolean) =>
    conclude({ assessed, strengths, statics, book, events, counts, set, options, chosen, repeated, final });
  const soFar = () => concluded(false);
  const margins = () => partMargins(rig, strengths, book.eventRuns(events, counts));

  function* run(wanted: readonly Wanted[]): Generator<Round, void, readonly RunResult[]> {
    for (;;) {
      const next = book.next(wanted, ROUND);
      if (next.length === 0) return;
      const made = book.runs;
      expected = Math.max(expected, made + next.length);
      const known = made > 0 && events.some((event) => book.good(event).length > 0);
      const results = yield {
        orders: next.map(({ order }) => order),
        made,
        expected,
        of: set.length,
        ...(known ? { soFar } : {}),
      };
      next.forEach((one, i) => {
        book.put(one.wanted, results[i]!);
      });
    }
  }
  const plain = (event: WhatIf): Wanted => ({ event, draw: 0, accuracy: options.accuracy });

  function* follow(): Generator<Round, void, readonly RunResult[]> {
    const found = whatFollows(assessed, margins(), events);
    for (const { event, counts: isCounted } of found) {
      const key = whatIfKey(event);
      if (events.some((one) => whatIfKey(one) === key)) continue;
      events.push(event);
      if (!isCounted) told.add(key);
    }
    yield* run(events.map(plain));
  }

  yield* run(seeds.map(plain));
  if (book.runs > 0) {
    if (!few) {
      yield* follow();
      const worst = worstEvents(assessed, strengths, book, events, counts);
      yield* run(worst.flatMap((event) => DRAWS.map((_, draw) => ({ ...plain(event), draw }))));
      repeated = true;
    }
    if (options.estimate) {
      const worst = worstEvents(assessed, strengths, book, events, counts);
      yield* run(worst.map((event) => ({ ...plain(event), accuracy: otherMesh(options.accuracy) })));
    }
    if (!few) yield* follow();
    if (!few) {
      const worst = worstEvents(assessed, strengths, book, events, counts);
      yield* run(worst.flatMap((event) => DRAWS.map((_, draw) => ({ ...plain(event), draw }))));
    }
  }
  return { outcome: concluded(true), demands: book.eventRuns(events, counts).map(slim) };
}

/** Without what only plots need. */
function slim({ runs, ...event }: EventRuns): EventRuns {
  return { ...event, runs: runs.map(({ before: _, trace: __, ...run }) => run) };
}

function seedsOf(
  { rig }: Assessed,
  { size }: SearchOptions,
  { weakPlaces }: RigStrengths,
  set: readonly WhatIf[],
): readonly WhatIf[] {
  return size === "quick" ? whatIfSet({ rig, weakPlaces, size }) : set;
}

/** Of every part the events that ask most of it, and those that bring the walker lowest or nearest to the ground. */
function worstEvents(
  { rig }: Assessed,
  strengths: RigStrengths,
  book: RunBook,
  events: readonly WhatIf[],
  counts: (index: number) => boolean,
): readonly WhatIf[] {
  const runs = book.eventRuns(events, counts);
  const chosen = new Set<number>();
  for (const part of judgedParts(rig, strengths)) {
    const demands = demandsOn(part, runs, lengthOf(strengths, part));
    const required = (index: number) =>
      classOf(events[index]!) === "expected" ? rig.requiredFactor.value : rig.requiredAfterFailure;
    const weight = (one: (typeof demands)[number]) => demandShare(one) * required(one.event);
    for (const one of [...demands].sort((a, b) => weight(b) - weight(a)).slice(0, WORST)) chosen.add(one.event);
  }
  const lowest = (of: (one: EventRuns) => number) => [...runs].sort((a, b) => of(a) - of(b)).slice(0, WORST);
  const least = (value: (run: EventRuns["runs"][number]) => number) => (one: EventRuns) =>
    Math.min(...one.runs.map(value));
  const feet = least(({ feetClearance }) => feetClearance ?? Number.MAX_VALUE);
  for (const { index } of [...lowest(feet), ...lowest(least(({ drop }) => -drop))]) chosen.add(index);
  return [...chosen].sort((a, b) => a - b).map((index) => events[index]!);
}

interface Follow {
  readonly event: WhatIf;
  readonly counts: boolean;
}

/** For every part below its factor: that it gives way in the event that asks most of it, as far as anything is left then. */
function whatFollows({ rig }: Assessed, parts: readonly PartMargins[], events: readonly WhatIf[]): readonly Follow[] {
  return parts.flatMap(({ part, byClass }): Follow[] =>
    Object.values(byClass).flatMap((one): Follow[] => {
      const id = part.id as PartId;
      const cause = events[one.demand.event]!;
      if (keptShare(one) >= 1 || cause.kind === "givesWay" || !leavesSomething(rig, id)) return [];
      const place = part.zones && one.demand.at !== undefined ? { place: one.demand.at / lineLength(part.zones) } : {};
      const event: WhatIf = { kind: "givesWay", at: cause.at, part: id, ...place, during: cause };
      if (missingIn(event, rig)) return [];
      return [{ event, counts: classOf(cause) === "expected" }];
    }),
  );
}

const lineLength = (zones: readonly { readonly to: number }[]) => zones.at(-1)!.to;
