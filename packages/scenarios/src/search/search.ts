/**
 * The search for the worst events of a rig. It decides which runs are to be made and makes none itself: it hands out orders and
 * takes results, so that one thread or many can make them, in whatever order they finish. The same rig gives the same answer.
 *
 * 1. Every event of the set once, as it stands. 2. What follows when a part that keeps too little gives way. 3. Where the runs so far,
 * or what is not known between them, reach highest: more events, once each. 4. Of every part the worst events, and those that bring
 * the walker lowest, in draws of all that scatters; they, and not the runs that chose the events, say how large a load is. 5. More
 * draws where a margin's interval reaches over a limit, until none does or the budget of runs is spent.
 */

import type { Accuracy } from "@secondline/engine";
import type { PartId, Rig } from "@secondline/rig";
import type { Assessed } from "../assessment/assessment.ts";
import { EVENT_CLASSES, type SeedFacts } from "../events/eventKind.ts";
import { leavesSomething } from "../events/givesWay.ts";
import { asItsKeySays, classOf, missingIn, spaceOf, type WhatIf, whatIfKey, whatIfSet } from "../events/registry.ts";
import type { RunResult } from "../facts/runFacts.ts";
import type { Outcome } from "../outcome/outcome.ts";
import type { likelyFirst } from "../reliability/likelyFirst.ts";
import { drawsOf, ENOUGH_DRAWS, type EventLevel, type EventRuns } from "../rule/demand.ts";
import { depthLevels, dropLevels, fallFacts } from "../rule/fall.ts";
import { isSettled, keptShare, type PartMargins, partMargins, requiredFactors } from "../rule/margins.ts";
import { gradeOfPull, personMargin, pullLevels } from "../rule/person.ts";
import type { RunOrder } from "../run/runOrder.ts";
import type { Spreads } from "../scatter/inputs.ts";
import { BLOCK_DRAWS, CENTRE, Sampler, SEED } from "../scatter/sampler.ts";
import { type RigStrengths, rigStrengths } from "../strengths/rigStrengths.ts";
import { conclude, staticsOf } from "./conclude.ts";
import { DEFAULT_RUNS } from "./defaultRuns.ts";
import { promising } from "./nominate.ts";
import { NEAR_GROUND, quantitiesOf } from "./quantities.ts";
import { RunBook, type Wanted } from "./runBook.ts";

export interface SearchOptions {
  readonly accuracy: Accuracy;
  /** What to run; default: the whole set of the rig, or its few when `size` is "quick". */
  readonly whatIfs?: readonly WhatIf[];
  readonly size?: "quick" | "full";
  /** Run the worst events on another mesh too, as one more draw. */
  readonly estimate?: boolean;
  /** Keep thinned-out forces of every event and of its first draws, for plots. */
  readonly traces?: boolean;
  /** About how many runs to make; default `DEFAULT_RUNS`. More runs settle what lies near a limit. */
  readonly runs?: number;
  /** Another one draws other falls. */
  readonly seed?: number;
  /** Other spreads than the assumed ones; 0 takes an input for exactly known. */
  readonly spreads?: Spreads;
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
const ORDERS_PER_ROUND = 24;
/** How often more events are looked for, and how many at a time. */
const LOOK_COUNT = 2;
const EVENTS_PER_LOOK = 8;
/** So many times its budget a search may spend at most [-]. */
const MOST_BUDGET_RATIO = 1.6;
/** What is begun when a budget is spent is finished: by so much a search usually goes past it, for telling how far it is [-]. */
const USUAL_BUDGET_RATIO = 1.2;
/**
 * A load of less than this share of what may be asked of its part is told from single runs, on the safe side; its worst events are not
 * drawn, unless its interval reaches over a limit [-]. The part that keeps least is drawn in any case.
 */
const LEAST_DRAWN_SHARE = 0.6;
/**
 * How much a family of events scatters shows only when one of its events is drawn. A line that comes off and whips scatters most: E from
 * draws was up to a quarter more than single runs had told. So the worst event of a family is drawn if the family may turn out the worst:
 * if it reaches this share of the worst event of all [-].
 */
const FAMILY_SHARE_OF_WORST = 0.8;
/** Draws of one event at most; of a longer search as many more as it has runs. */
const MOST_DRAWS = 48;

export const otherMesh = (accuracy: Accuracy): Accuracy => (accuracy === "fine" ? "standard" : "fine");

/** The outcome, and the runs that it rests on: a take-down date asks them again on later days. */
export interface SearchResult {
  readonly outcome: Outcome;
  readonly demands: readonly EventRuns[];
}

/**
 * Yields rounds of orders; is handed their results, in the same order. `likely` works out which part goes first: it is handed in, for
 * it is wanted at the end only, and a page has it loaded until then.
 */
export function* search(
  assessed: Assessed,
  options: SearchOptions,
  likely: typeof likelyFirst,
): Generator<Round, SearchResult, readonly RunResult[]> {
  const { rig } = assessed;
  const strengths = rigStrengths(rig, assessed.tests);
  const statics = staticsOf(rig, strengths);
  const set = whatIfSet({ rig, weakPlaces: strengths.weakPlaces, size: "full" });
  const seeds = options.whatIfs ?? seedsOf(assessed, options, strengths, set);
  const chosen = options.whatIfs !== undefined;
  const few = options.size === "quick" || chosen;
  const book = new RunBook(options.traces === true);
  const { runs: budget = DEFAULT_RUNS, seed = SEED, spreads } = options;
  const mostDraws = MOST_DRAWS * Math.max(1, budget / DEFAULT_RUNS);
  const sampler = new Sampler(rig, { seed, ...(spreads ? { spreads } : {}) });
  const facts: SeedFacts = { rig, weakPlaces: strengths.weakPlaces, size: "full" };
  const quantities = quantitiesOf(rig, strengths);
  const events: WhatIf[] = [...seeds];
  // Parts whose cause is itself a failure tell only what would follow.
  const told = new Set<string>();
  // How many draws of an event were asked for.
  const drawn = new Map<string, number>();
  const counts = (index: number) => !told.has(whatIfKey(events[index]!));
  let repeated = false;
  let expected = few ? seeds.length : Math.max(USUAL_BUDGET_RATIO * budget, seeds.length);
  const concluded = (final: boolean) =>
    conclude({
      assessed,
      likely,
      strengths,
      statics,
      book,
      events,
      counts,
      set,
      options,
      chosen,
      few,
      repeated,
      final,
    });
  const soFar = () => concluded(false);
  const counted = () => book.eventRuns(events, counts);
  const margins = () => partMargins(rig, strengths, counted());

  function* run(wanted: readonly Wanted[]): Generator<Round, void, readonly RunResult[]> {
    for (;;) {
      const next = book.next(wanted, ORDERS_PER_ROUND);
      if (next.length === 0) return;
      const made = book.runs;
      expected = Math.max(expected, made + book.missing(wanted) + 1);
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
  const plain = (event: WhatIf): Wanted => ({ event, sample: CENTRE, accuracy: options.accuracy });
  const add = (found: readonly WhatIf[]) => {
    const keys = new Set(events.map(whatIfKey));
    events.push(...found.filter((event) => !keys.has(whatIfKey(event))));
  };

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

  /** Looks where the worst may be, between the events that were run. */
  function* look(): Generator<Round, void, readonly RunResult[]> {
    add(promising(counted(), quantities, facts, EVENTS_PER_LOOK));
    yield* run(events.map(plain));
  }

  /** Past the budget, an event that leaves something unsettled gets its first draws, and no more. */
  function notYetDrawn(): readonly WhatIf[] {
    const runs = counted();
    const open = new Set(openEvents(rig, runs, margins()));
    return runs.filter((one) => open.has(one.index) && drawsOf(one).length < ENOUGH_DRAWS).map(({ event }) => event);
  }

  /** Draws of the worst events, block by block; events that leave something unsettled get more draws. */
  function* draw(): Generator<Round, void, readonly RunResult[]> {
    for (;;) {
      const wanted = book.runs < budget ? toDraw(rig, counted(), margins(), mostDraws) : notYetDrawn();
      if (wanted.length === 0 || book.runs > MOST_BUDGET_RATIO * budget) return;
      const orders = wanted.flatMap((event) => {
        const key = whatIfKey(event);
        const from = drawn.get(key) ?? 0;
        drawn.set(key, from + BLOCK_DRAWS);
        // The first block is even in every input: its traces make the band behind that of the event.
        const trace = from === 0;
        return sampler.draws(event, from, from + BLOCK_DRAWS).map((sample) => ({ ...plain(event), sample, trace }));
      });
      yield* run(orders);
      const other = { accuracy: otherMesh(options.accuracy), trace: false };
      if (options.estimate) yield* run(orders.map((one) => ({ ...one, ...other })));
      repeated = true;
    }
  }

  yield* run(seeds.map(plain));
  if (book.runs > 0 && !few) {
    yield* follow();
    for (let i = 0; i < LOOK_COUNT; i++) yield* look();
    yield* draw();
    yield* follow();
    yield* draw();
  } else if (book.runs > 0 && options.estimate) {
    yield* run(events.map((event) => ({ ...plain(event), accuracy: otherMesh(options.accuracy) })));
  }
  return { outcome: concluded(true), demands: counted().map(slim) };
}

/** The runs without their traces, which only plots need. */
function slim({ runs, ...event }: EventRuns): EventRuns {
  return { ...event, runs: runs.map(({ trace: _, ...run }) => run) };
}

function seedsOf(
  { rig }: Assessed,
  { size }: SearchOptions,
  { weakPlaces }: RigStrengths,
  set: readonly WhatIf[],
): readonly WhatIf[] {
  return size === "quick" ? whatIfSet({ rig, weakPlaces, size }) : set;
}

/** What a part, the drop or the pull on the person is ranked by in an event: the larger, the worse. */
interface RankedEvent {
  readonly event: number;
  readonly value: number;
}

/**
 * The events to be drawn next: those that may be the worst of something that matters, and those that a limit hangs on, in `mostDraws`
 * at most.
 */
function toDraw(
  rig: Rig,
  runs: readonly EventRuns[],
  margins: readonly PartMargins[],
  mostDraws: number,
): readonly WhatIf[] {
  const byIndex = new Map(runs.map((one) => [one.index, one]));
  const times = (index: number) => drawsOf(byIndex.get(index)!).length;
  const isDrawn = (index: number) => times(index) >= ENOUGH_DRAWS;
  const chosen = new Set<number>();
  const choose = (values: readonly RankedEvent[]) => {
    const known = values.filter(({ event }) => isDrawn(event) || chosen.has(event));
    const most = Math.max(0, ...known.map(({ value }) => value));
    const worst = values.reduce((a, b) => (b.value > a.value ? b : a));
    if (worst.value > most && !isDrawn(worst.event)) chosen.add(worst.event);
  };
  const familyOf = (index: number) => spaceOf(byIndex.get(index)!.event)?.family;
  const chooseOfFamilies = (values: readonly RankedEvent[]) => {
    const from = Math.max(LEAST_DRAWN_SHARE, FAMILY_SHARE_OF_WORST * Math.max(...values.map(({ value }) => value)));
    const seen = new Set<string | undefined>([undefined]);
    for (const { event } of values) if (isDrawn(event) || chosen.has(event)) seen.add(familyOf(event));
    for (const { event, value } of [...values].sort((a, b) => b.value - a.value)) {
      if (value < from || seen.has(familyOf(event))) continue;
      seen.add(familyOf(event));
      chosen.add(event);
    }
  };
  const required = requiredFactors(rig);
  const asked = margins.flatMap(({ demands }) =>
    EVENT_CLASSES.map((name) =>
      demands
        .filter((one) => one.class === name)
        .map((one) => ({ event: one.event, value: (one.rank / one.strength5) * required[name] })),
    ),
  );
  const drawnFrom = Math.min(LEAST_DRAWN_SHARE, Math.max(...asked.flat().map(({ value }) => value)));
  for (const values of asked) if (values.some(({ value }) => value >= drawnFrom)) choose(values);
  for (const values of asked) chooseOfFamilies(values);
  const of = ({ of: { index }, level }: EventLevel) => ({ event: index, value: level.rank });
  choose(dropLevels(runs).map(of));
  choose(pullLevels(runs).map(of));
  const depths = depthLevels(runs).map(of);
  const lowest = depths.filter(({ value }) => -value < NEAR_GROUND);
  if (lowest.length > 0) choose(lowest.map(({ event, value }) => ({ event, value: NEAR_GROUND + value })));
  for (const index of openEvents(rig, runs, margins)) if (times(index) < mostDraws) chosen.add(index);
  return [...chosen].sort((a, b) => a - b).map((index) => byIndex.get(index)!.event);
}

/** Events by which a part, the height of the feet or the pull on the person is not settled. */
function openEvents(rig: Rig, runs: readonly EventRuns[], margins: readonly PartMargins[]): readonly number[] {
  const parts = margins.flatMap(({ byClass }) =>
    Object.values(byClass).flatMap((one) => (isSettled(one) ? [] : [one.demand.event])),
  );
  const { leastFeet } = fallFacts(runs);
  const over = (limit: number) => leastFeet!.interval[0] >= limit && leastFeet!.interval[1] <= limit;
  const feet = leastFeet && [0, rig.requiredClearance].some(over) ? [leastFeet.event] : [];
  const person = personMargin(runs);
  const pull = person && gradeOfPull(person.low) !== gradeOfPull(person.high) ? [person.event] : [];
  return [...parts, ...feet, ...pull];
}

interface Follow {
  readonly event: WhatIf;
  readonly counts: boolean;
}

/** For every part below its factor, the event that it gives way where it is loaded most; none if nothing is left of the rig then. */
function whatFollows({ rig }: Assessed, parts: readonly PartMargins[], events: readonly WhatIf[]): readonly Follow[] {
  return parts.flatMap(({ part, byClass }): Follow[] =>
    Object.values(byClass).flatMap((one): Follow[] => {
      const id = part.id as PartId;
      const cause = events[one.demand.event]!;
      if (keptShare(one) >= 1 || cause.kind === "givesWay" || !leavesSomething(rig, id)) return [];
      const place = part.zones && one.demand.at !== undefined ? { place: one.demand.at / lineLength(part.zones) } : {};
      const event: WhatIf = asItsKeySays({ kind: "givesWay", at: cause.at, part: id, ...place, during: cause });
      if (missingIn(event, rig)) return [];
      return [{ event, counts: classOf(cause) === "expected" }];
    }),
  );
}

const lineLength = (zones: readonly { readonly to: number }[]) => zones.at(-1)!.to;
