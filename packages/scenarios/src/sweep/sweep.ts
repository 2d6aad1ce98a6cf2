/**
 * A sweep: how a number of the rig moves what governs. It makes no run; it hands out orders and takes results, as a search does.
 *
 * 1. At the ends and in the middle of the range every event of the set once, as it stands; the worst few are kept. 2. Of each of them
 * a block of draws at every point, another one at each: so that the points together know how much comes of which input. 3. One smooth
 * curve for each event and part through all draws (`fit.ts`); at every value the worst of them. 4. Where it meets a limit.
 */
import type { Accuracy } from "@secondline/engine";
import type { Assessed } from "../assessment/assessment.ts";
import { missingIn, type WhatIf, whatIfKey, whatIfSet } from "../events/registry.ts";
import type { RunResult } from "../facts/runFacts.ts";
import { losesWalker, meetsGround } from "../rule/fall.ts";
import type { RunOrder } from "../run/runOrder.ts";
import type { Spreads } from "../scatter/inputs.ts";
import { BLOCK_DRAWS, CENTRE, Sampler, SEED } from "../scatter/sampler.ts";
import { RunBook, type Wanted } from "../search/runBook.ts";
import type { KnobAxis } from "./basis.ts";
import { besidesOf } from "./besides.ts";
import { alongOne, limitsOf, regionIn } from "./between.ts";
import { type Envelope, envelopeOf, type PointRuns } from "./envelope.ts";
import { governingEvents, lookedAt } from "./governing.ts";
import type { Knob } from "./knob.ts";
import type { SweepWhat, Swept, SweptPoint } from "./sweepOutcome.ts";
import type { SweepPoint, SweepPoints } from "./sweepPoints.ts";
import { toldLevel, tracksOf } from "./tracks.ts";

export interface SweepOptions {
  readonly what: SweepWhat;
  readonly accuracy: Accuracy;
  /** Events to look at; default: the whole set. */
  readonly size?: "quick" | "full";
  /** Events to draw instead of those that are found to govern. */
  readonly whatIfs?: readonly WhatIf[];
  /** Beside, or in place of, what the rig requires; in the unit of what is asked. */
  readonly limit?: number;
  readonly seed?: number;
  readonly spreads?: Spreads;
}

/** What a sweep asks for next. */
export interface SweepRound {
  readonly orders: readonly { readonly assessed: Assessed; readonly order: RunOrder }[];
  readonly made: number;
  /** How many there will be, about. */
  readonly expected: number;
}

/** Nothing could be run: there is no curve. */
export class NothingSwept extends Error {}

/** Events that are drawn, of one knob and of two [-]. */
const MOST_EVENTS = 4;
const MOST_EVENTS_OF_TWO = 3;
/** Draws of an event over all points at least: few points get more each [-]. */
const LEAST_DRAWS = 48;

/** Draws of an event at each of so many rigs [-]. */
const drawsAt = (rigs: number): number => BLOCK_DRAWS * Math.max(1, Math.ceil(LEAST_DRAWS / (BLOCK_DRAWS * rigs)));

/** How large a sweep is, before it is begun. */
export interface SweepSize {
  /** Events that are looked at. */
  readonly events: number;
  readonly knobs: number;
  /** Rigs that differ in more than the months. */
  readonly rigs: number;
}

/** How many runs a sweep will make, about: every event at the ends and in the middle, then draws of the worst [-]. */
export function sweepRuns({ events, knobs, rigs }: SweepSize): number {
  const looks = Math.min(rigs, 2 ** knobs + 1);
  return looks * events + rigs * drawsAt(rigs) * Math.min(mostEvents(knobs), events);
}

const mostEvents = (knobs: number): number => (knobs > 1 ? MOST_EVENTS_OF_TWO : MOST_EVENTS);

/** Points whose runs are the same ones. */
interface Group {
  readonly assessed: Assessed;
  readonly book: RunBook;
  readonly sampler: Sampler;
  /** The first of its draws. */
  readonly from: number;
}

/** Yields rounds of orders; is handed their results, in the same order. `found.points` has one point at least. */
export function* sweep(
  found: SweepPoints,
  knobs: readonly Knob[],
  options: SweepOptions,
): Generator<SweepRound, Swept, readonly RunResult[]> {
  const { points } = found;
  const { what, accuracy, seed = SEED, spreads } = options;
  const groups = new Map<string, Group>();
  for (const { assessed } of points) {
    if (groups.has(assessed.hash)) continue;
    const sampler = new Sampler(assessed.rig, { seed, ...(spreads ? { spreads } : {}) });
    groups.set(assessed.hash, { assessed, book: new RunBook(false), sampler, from: groups.size });
  }
  const groupOf = ({ assessed }: SweepPoint) => groups.get(assessed.hash)!;
  const draws = drawsAt(groups.size);
  const most = mostEvents(knobs.length);
  const looks = options.whatIfs ? [] : lookedAt(points);
  const seeds = options.whatIfs ?? setOver(looks, options.size ?? "full");
  const later = groups.size * draws * Math.min(most, seeds.length);
  let made = 0;
  let expected = looks.length * seeds.length + later;

  function* run(
    wanted: readonly { group: Group; wanted: Wanted }[],
  ): Generator<SweepRound, void, readonly RunResult[]> {
    for (;;) {
      const next = [...groups.values()].flatMap((group) =>
        group.book
          .next(
            wanted.flatMap((one) => (one.group === group ? [one.wanted] : [])),
            Number.MAX_SAFE_INTEGER,
          )
          .map((one) => ({ group, ...one })),
      );
      if (next.length === 0) return;
      expected = Math.max(expected, made + next.length);
      const orders = next.map(({ group, order }) => ({ assessed: group.assessed, order }));
      const results = yield { orders, made, expected };
      next.forEach(({ group, wanted: one }, i) => {
        group.book.put(one, results[i]!);
      });
      made += next.length;
    }
  }

  const tracks = tracksOf(what, points);
  const here = (group: Group, events: readonly WhatIf[]) =>
    events.filter((event) => !missingIn(event, group.assessed.rig));
  yield* run(
    looks.flatMap((point) => {
      const group = groupOf(point);
      return here(group, seeds).map((event) => ({ group, wanted: { event, sample: CENTRE, accuracy } }));
    }),
  );
  const seen = looks.map((point) => {
    const { book } = groupOf(point);
    const runs = seeds.flatMap((event) => {
      const result = book.result(event, CENTRE, accuracy);
      return result?.ok ? [{ event, run: result }] : [];
    });
    return { point, runs };
  });
  const events = options.whatIfs ?? governingEvents(seen, tracks, most);
  // Whether the ones without a number govern nobody knows: they may be the hardest. What governs at another look is drawn all the same.
  const silent = seeds.filter(
    (event) =>
      !events.includes(event) &&
      looks.some((point) => {
        const group = groupOf(point);
        return !missingIn(event, group.assessed.rig) && group.book.result(event, CENTRE, accuracy)?.ok !== true;
      }),
  );
  expected = made + groups.size * draws * events.length;
  const samples = (group: Group, event: WhatIf) =>
    group.sampler.draws(event, group.from * draws, (group.from + 1) * draws);
  yield* run(
    [...groups.values()].flatMap((group) =>
      here(group, events).flatMap((event) =>
        samples(group, event).map((sample) => ({ group, wanted: { event, sample, accuracy } })),
      ),
    ),
  );
  const counts = new Map<SweepPoint, Pick<SweptPoint, "runs" | "failed" | "lost" | "ground">>();
  const runs = points.flatMap((point, index): PointRuns[] => {
    const group = groupOf(point);
    let [good, failed, lost, ground] = [0, 0, 0, 0];
    const all = here(group, events).map((event): PointRuns => {
      const drawn = samples(group, event).flatMap((sample) => {
        const result = group.book.result(event, sample, accuracy);
        if (!result?.ok) {
          failed++;
          return [];
        }
        good++;
        if (meetsGround(result)) ground++;
        if (losesWalker(result)) lost++;
        return [{ run: result, draw: sample.id, deviates: sample.deviates }];
      });
      return { point: index, event, runs: drawn };
    });
    counts.set(point, { runs: good, failed, lost, ground });
    return all;
  });
  const axes = knobs.map((knob, k): KnobAxis => ({ knob, values: sortedValues(points, k) }));
  const envelope = envelopeOf({ what, axes, points, tracks, runs });
  const limits = limitsOf(points, options);
  if (envelope.own.every((one) => one === undefined)) throw new NothingSwept();
  const swept = points.map((point, i) => sweptPoint(what, point, envelope, i, counts.get(point)!));
  const { rig } = points[0]!.assessed;
  return {
    rigName: rig.name,
    invented: rig.invented,
    knobs,
    what,
    accuracy,
    points: swept,
    bad: found.bad,
    ...(knobs.length > 1
      ? { limits: [], ...regionIn(what, limits, axes, points, envelope) }
      : alongOne(what, limits, axes[0]!, envelope)),
    events: events.map((event) => ({ event, key: whatIfKey(event) })),
    looked: seeds.length,
    silent: silent.map((event) => ({ event, key: whatIfKey(event) })),
    runs: made,
    draws,
    misfit: envelope.misfit,
    besides: besidesOf(points),
  };
}

/** The events of all rigs that are looked at. */
function setOver(looks: readonly SweepPoint[], size: "quick" | "full"): readonly WhatIf[] {
  const all = looks.flatMap(({ assessed: { rig }, strengths }) =>
    whatIfSet({ rig, weakPlaces: strengths.weakPlaces, size }),
  );
  return [...new Map(all.map((event) => [whatIfKey(event), event])).values()];
}

const sortedValues = (points: readonly SweepPoint[], k: number): readonly number[] =>
  [...new Set(points.map(({ values }) => values[k]!))].sort((a, b) => a - b);

function sweptPoint(
  what: SweepWhat,
  { values, change }: SweepPoint,
  envelope: Envelope,
  index: number,
  counts: Pick<SweptPoint, "runs" | "failed" | "lost" | "ground">,
): SweptPoint {
  const curve = envelope.at(values);
  const own = envelope.own[index];
  return {
    values,
    change,
    ...(curve ? { curve: { ...toldLevel(what, curve), ...curve.governing } } : {}),
    ...(own
      ? {
          own: { ...toldLevel(what, own), ...own.governing },
          run: { whatIf: own.governing.key, draw: own.draw },
        }
      : {}),
    ...counts,
  };
}
