/**
 * A search held against brute force. Events by chance, run once each, only nominate. Then fresh draws, of a seed that no search uses,
 * say how large loads and drops are: at the search's own worst event of every part, at the nominated ones, and at some by chance. Draws
 * that chose an event never tell how large its loads are.
 */
import type { PoolRunner } from "@secondline/runner";
import {
  type Assessed,
  type ClassOutcome,
  classOf,
  EVENT_CLASSES,
  type GoodRun,
  type Outcome,
  type RigStrengths,
  rigStrengths,
  Sampler,
  type WhatIf,
  whatIfKey,
} from "@secondline/scenarios";
import { judgedParts, lengthOf, utilisation } from "@secondline/scenarios/utilisation";
import { clopperPearson } from "@secondline/statistics";
import { drawsOf, runAll } from "./fresh.ts";
import { BELOW_E, freshValue } from "./quantile.ts";
import { randomEvents } from "./randomEvents.ts";

export interface BruteForceSize {
  /** Events by chance that nominate. */
  readonly events: number;
  /** Fresh draws of every event looked at. */
  readonly draws: number;
  /** Events looked at that nobody nominated. */
  readonly unchosen: number;
}

/** Seeds that no search uses. */
const SEEDS = { events: 12_345, nominate: 777_001, fresh: 777_002 } as const;
/** Over all parts the worst that chance found, besides the worst of every part. */
const NOMINATED = 5;
/** A part that is asked for less than this share of what may be asked nominates nothing of its own [-]. */
const MATTERS = 0.7;
/** A fresh 95 % value may lie this much above E, and two of its standard errors [-]. */
const ALLOWED = 0.03;

export type Chosen = "own" | "nominated" | "unchosen";

/** What fresh draws of one event say of one quantity that the search has a 95 % value of. */
export interface Case {
  readonly event: string;
  readonly chosen: Chosen;
  /** A part and its class, `drop`, or `feet`. */
  readonly of: string;
  /** Whether it is the event from which the search has its value. */
  readonly governing: boolean;
  /** E over what may be asked; of drop and feet 1 [-]. */
  readonly share: number;
  /** The fresh 95 % value over E − 1, and its standard error [-]. */
  readonly over: number;
  readonly error: number;
  /** Fresh draws above E [-], and whether that is more than chance makes of 5 %. */
  readonly above: number;
  readonly tooMany: boolean;
  /** Whether it lies higher than `ALLOWED` and two standard errors above E. */
  readonly beyond: boolean;
}

export interface BruteForced {
  readonly verdict: Outcome["verdict"];
  readonly searchRuns: number;
  readonly freshRuns: number;
  readonly failed: number;
  readonly cases: readonly Case[];
}

type Looked = Readonly<Record<Chosen, readonly WhatIf[]>>;

/** Told as soon as the draws of an event are made: whatever ends a long count early, what it found so far is there. */
type Told = (cases: readonly Case[]) => void;

export async function bruteForce(
  runner: PoolRunner,
  assessed: Assessed,
  size: BruteForceSize,
  tell: Told,
): Promise<BruteForced> {
  const answer = await runner.study({ id: "search", assessed, accuracy: "standard" });
  if (!answer.ok) throw new Error(answer.message);
  const { outcome } = answer.value;
  const strengths = rigStrengths(assessed.rig, assessed.tests);
  const looked = await choose(runner, assessed, outcome, strengths, size);
  const sampler = new Sampler(assessed.rig, { seed: SEEDS.fresh });
  const cases: Case[] = [];
  const known = new Set<string>();
  let freshRuns = 0;
  let failed = 0;
  for (const chosen of ["own", "nominated", "unchosen"] as const) {
    for (const event of looked[chosen]) {
      const key = whatIfKey(event);
      if (known.has(key)) continue;
      known.add(key);
      const all = await runAll(runner, assessed, drawsOf(sampler, [event], 0, size.draws));
      const runs = all.filter((run) => run !== undefined);
      freshRuns += all.length;
      failed += all.length - runs.length;
      const found = casesOf(outcome, assessed, strengths, event, runs).map((one) => ({ ...one, event: key, chosen }));
      tell(found);
      cases.push(...found);
    }
  }
  return { verdict: outcome.verdict, searchRuns: outcome.search.runs, freshRuns, failed, cases };
}

const eventOf = (outcome: Outcome, index: number): WhatIf => outcome.whatIfs[index]!.whatIf;

async function choose(
  runner: PoolRunner,
  assessed: Assessed,
  outcome: Outcome,
  strengths: RigStrengths,
  { events, unchosen }: BruteForceSize,
): Promise<Looked> {
  const { rig } = assessed;
  const random = randomEvents(rig, events, SEEDS.events);
  const once = await runAll(runner, assessed, drawsOf(new Sampler(rig, { seed: SEEDS.nominate }), random, 0, 1));
  const seen = random.flatMap((event, i) => (once[i] ? [{ event, run: once[i] }] : []));
  const worst = (value: (one: { readonly event: WhatIf; readonly run: GoodRun }) => number, count: number, from = 0) =>
    seen
      .map((one) => ({ event: one.event, value: value(one) }))
      .filter((one) => one.value >= from)
      .sort((a, b) => b.value - a.value)
      .slice(0, count)
      .map((one) => one.event);
  const parts = judgedParts(rig, strengths);
  const required = outcome.required;
  const asked = (part: (typeof parts)[number], { event, run }: { readonly event: WhatIf; readonly run: GoodRun }) =>
    (utilisation(part, run, lengthOf(strengths, part))?.share ?? 0) * required[classOf(event)];
  const ofParts = parts.flatMap((part) =>
    EVENT_CLASSES.flatMap((name) => worst((one) => (classOf(one.event) === name ? asked(part, one) : 0), 1, MATTERS)),
  );
  const { deepest, leastFeet } = outcome.falls;
  const falls = [deepest, leastFeet].flatMap((one) => (one ? [eventOf(outcome, one.whatIf)] : []));
  return {
    own: [...outcome.parts.flatMap((part) => classesOf(part).map(([, one]) => eventOf(outcome, one.whatIf))), ...falls],
    nominated: [
      ...worst((one) => Math.max(...parts.map((part) => asked(part, one))), NOMINATED),
      ...ofParts,
      ...worst(({ run }) => run.drop, 1),
    ],
    unchosen: random.slice(0, unchosen),
  };
}

const classesOf = ({ byClass }: Outcome["parts"][number]) =>
  EVENT_CLASSES.flatMap((name): (readonly [typeof name, ClassOutcome])[] =>
    byClass[name] ? [[name, byClass[name]]] : [],
  );

function casesOf(
  outcome: Outcome,
  assessed: Assessed,
  strengths: RigStrengths,
  event: WhatIf,
  runs: readonly GoodRun[],
): readonly Omit<Case, "event" | "chosen">[] {
  const key = whatIfKey(event);
  const name = classOf(event);
  const isEvent = (index: number) => outcome.whatIfs[index]!.key === key;
  const parts = judgedParts(assessed.rig, strengths).flatMap((part) => {
    const found = outcome.parts.find(({ id }) => id === part.id)?.byClass[name];
    if (!found) return [];
    const values = runs.map((run) => utilisation(part, run, lengthOf(strengths, part))?.share ?? 0);
    const of = { of: `${part.id}, ${name}`, governing: isEvent(found.whatIf), share: found.required / found.margin };
    return [{ ...of, ...held(values, 1 / found.margin) }];
  });
  const { deepest, leastFeet } = outcome.falls;
  const drop = deepest && {
    of: "drop",
    governing: isEvent(deepest.whatIf),
    share: 1,
    ...held(
      runs.map((run) => run.drop),
      deepest.drop,
    ),
  };
  return [...parts, ...(drop ? [drop] : []), ...(leastFeet ? [feet(leastFeet, isEvent, runs, deepest?.drop)] : [])];
}

/** Heights of the feet are near 0 where they matter: their differences are told in drops. */
function feet(
  leastFeet: NonNullable<Outcome["falls"]["leastFeet"]>,
  isEvent: (index: number) => boolean,
  runs: readonly GoodRun[],
  drop = 1,
): Omit<Case, "event" | "chosen"> {
  const lower = runs.flatMap(({ feetClearance }) =>
    feetClearance === undefined ? [] : [1 + (leastFeet.height - feetClearance) / drop],
  );
  return { of: "feet", governing: isEvent(leastFeet.whatIf), share: 1, ...held(lower, 1) };
}

function held(values: readonly number[], limit: number): Pick<Case, "over" | "error" | "above" | "tooMany" | "beyond"> {
  const fresh = freshValue(values);
  const [over, error] = [fresh.value / limit - 1, fresh.error / limit];
  const above = values.filter((value) => value > limit).length;
  return {
    over,
    error,
    above: above / values.length,
    tooMany: clopperPearson(above, values.length, BELOW_E)[0] > 1 - BELOW_E,
    beyond: over > ALLOWED + 2 * error,
  };
}
