/**
 * The runs of a plan, by number: rig after rig, in it sweep after sweep, point after point, what-if after what-if, draw after draw.
 * The plan alone decides which run has which number. So anybody may make any run, in any order.
 */
import type { AssessmentIssue } from "../assessment/assessmentFacts.ts";
import { inputHash } from "../assessment/inputHash.ts";
import { missingIn, type WhatIf, whatIfKey, whatIfSet } from "../events/registry.ts";
import type { GoodRun, RunResult } from "../facts/runFacts.ts";
import { nineDigits } from "../nineDigits.ts";
import type { RunOrder } from "../run/runOrder.ts";
import { runWork } from "../run/runWork.ts";
import { type DrawSample, Sampler, SEED } from "../scatter/sampler.ts";
import { type Knob, knobValues } from "../sweep/knob.ts";
import { type SweepPoint, sweepPoints } from "../sweep/sweepPoints.ts";
import { GENERATION, VERSION } from "../version.ts";
import type { StudyPlan } from "./readPlan.ts";

/** A rig of the plan, with the ranges read against it. */
export interface PlannedRig {
  /** The rig's file, as the plan names it. */
  readonly file: string;
  readonly document: unknown;
  /** One list of knobs per sweep. */
  readonly sweeps: readonly (readonly Knob[])[];
}

/** One rig at one point of a sweep. */
interface Case {
  readonly file: string;
  readonly point: SweepPoint;
  readonly events: readonly WhatIf[];
  /** Number of its first run, and of the first draw of its events. */
  readonly first: number;
  readonly firstDraw: number;
}

export interface PlanRun {
  readonly number: number;
  readonly point: SweepPoint;
  readonly file: string;
  readonly event: WhatIf;
  readonly sample: DrawSample;
  /** Counted from 0 in its what-if at its point. */
  readonly draw: number;
}

/** More rigs and points than this are a plan for several plans [-]. */
export const MOST_CASES = 5000;

export type Planned =
  | { readonly ok: true; readonly runs: PlanRuns }
  | {
      readonly ok: false;
      readonly issues: readonly {
        readonly file: string;
        readonly change: Readonly<Record<string, string>>;
        readonly issue: AssessmentIssue;
      }[];
    };

/** Rigs times points, counted before any point is looked at. */
export function casesOf(plan: StudyPlan, rigs: readonly PlannedRig[]): number {
  const of = ({ sweeps }: PlannedRig) =>
    sweeps.length === 0
      ? 1
      : sweeps.reduce(
          (sum, knobs, s) =>
            sum + knobs.reduce((all, knob) => all * knobValues(knob, plan.sweeps[s]!.points).length, 1),
          0,
        );
  return rigs.reduce((sum, rig) => sum + of(rig), 0);
}

/** Puts every rig of the plan through its checks. */
export function planned(plan: StudyPlan, rigs: readonly PlannedRig[]): Planned {
  const issues: { file: string; change: Readonly<Record<string, string>>; issue: AssessmentIssue }[] = [];
  const cases: Case[] = [];
  let first = 0;
  const known = plan.on === undefined ? {} : { on: plan.on };
  for (const { file, document, sweeps } of rigs) {
    const all = (sweeps.length === 0 ? [[]] : sweeps).map((knobs, s) =>
      sweepPoints({ document, known, knobs, counts: knobs.map(() => plan.sweeps[s]!.points) }),
    );
    const base = sweepPoints({ document, known, knobs: [], counts: [] }).points[0];
    const wanted = eventsOf(plan, base);
    for (const { points, bad } of all) {
      for (const one of bad) issues.push({ file, change: one.change, issue: one.issues[0]! });
      points.forEach((point, p) => {
        const events = wanted.filter((event) => !missingIn(event, point.assessed.rig));
        cases.push({ file, point, events, first, firstDraw: p * plan.draws });
        first += events.length * plan.draws;
      });
    }
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, runs: new PlanRuns(plan, rigs, cases, first) };
}

function eventsOf({ whatIfs }: StudyPlan, base: SweepPoint | undefined): readonly WhatIf[] {
  if (typeof whatIfs !== "string") return whatIfs;
  if (!base) return [];
  return whatIfSet({ rig: base.assessed.rig, weakPlaces: base.strengths.weakPlaces, size: whatIfs });
}

export class PlanRuns {
  readonly plan: StudyPlan;
  /** How many runs there are. */
  readonly count: number;
  /** What-ifs that the plan names and that none of its rigs has, at no value. */
  readonly nowhere: readonly WhatIf[];
  /** Hash of everything that decides about the numbers. */
  readonly hash: string;
  readonly #cases: readonly Case[];
  readonly #samplers = new Map<string, Sampler>();

  constructor(plan: StudyPlan, rigs: readonly PlannedRig[], cases: readonly Case[], count: number) {
    this.plan = plan;
    this.count = count;
    this.#cases = cases;
    const named = typeof plan.whatIfs === "string" ? [] : plan.whatIfs;
    this.nowhere = named.filter((event) => !cases.some(({ events }) => events.includes(event)));
    const documents = rigs.map(({ document }) => document);
    this.hash = inputHash({ version: VERSION, generation: GENERATION, plan: { ...plan, rigs: documents } });
  }

  run(number: number): PlanRun {
    const { draws } = this.plan;
    const { file, point, events, first, firstDraw } = this.#caseOf(number);
    const event = events[Math.floor((number - first) / draws)]!;
    const draw = (number - first) % draws;
    const [sample] = this.#samplerOf(point).draws(event, firstDraw + draw, firstDraw + draw + 1);
    return { number, file, point, event, draw, sample: sample! };
  }

  /** About how much work the run is [element-steps]. */
  work(number: number): number {
    const { point, event } = this.run(number);
    return runWork(point.assessed.rig, point.strengths, event, this.plan.accuracy);
  }

  order({ event, sample }: PlanRun, before?: GoodRun): RunOrder {
    return { event, draw: sample.draw, accuracy: this.plan.accuracy, ...(before ? { before } : {}) };
  }

  /** The last case that begins at the number or before it. */
  #caseOf(number: number): Case {
    let [low, high] = [0, this.#cases.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (this.#cases[middle]!.first <= number) low = middle;
      else high = middle - 1;
    }
    return this.#cases[low]!;
  }

  #samplerOf({ assessed: { hash, rig } }: SweepPoint): Sampler {
    const seed = this.plan.seed ?? SEED;
    let sampler = this.#samplers.get(hash);
    if (!sampler) {
      // One case after another is run: a few are enough.
      if (this.#samplers.size > 16) this.#samplers.clear();
      sampler = new Sampler(rig, { seed });
      this.#samplers.set(hash, sampler);
    }
    return sampler;
  }
}

/** A finished run as one line of JSON, without its line end. The same run gives the same line, to the last digit. */
export function resultLine(run: PlanRun, rigName: string, result: RunResult): string {
  const { number, file, point, event, sample, draw } = run;
  const head = {
    run: number,
    rig: rigName,
    file,
    set: point.change,
    whatIf: whatIfKey(event),
    draw,
    drawn: sample.draw,
  };
  if (!result.ok) return JSON.stringify({ ...head, ok: false, reason: result.trouble.reason });
  const { peaks, drop, feetClearance, caughtBy, lostBecause, loads, webbing, gaveWay, catchTime } = result;
  const told = {
    ok: true,
    caughtBy,
    ...(lostBecause === undefined ? {} : { lostBecause }),
    drop,
    ...(feetClearance === undefined ? {} : { feet: feetClearance }),
    catchTime,
    peaks,
    loads,
    webbing: { main: most(webbing.main.peak), backup: most(webbing.backup.peak) },
    gaveWay: gaveWay.map(({ part, time, at }) => ({ part, time, ...(at === undefined ? {} : { at }) })),
  };
  return JSON.stringify({ ...head, ...nineDigits(told) });
}

function most(values: ArrayLike<number>): number {
  let found = 0;
  for (let i = 0; i < values.length; i++) found = Math.max(found, values[i]!);
  return found;
}
