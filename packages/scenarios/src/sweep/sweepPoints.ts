/** The rigs of a sweep: every one goes through the same checks as a rig file, and through the same assessment. */
import { type Rig, readRig } from "@secondline/rig";
import { addDays, readDate } from "@secondline/strength";
import { type Assessed, type Assessment, assess, rigOnLaterDays } from "../assessment/assessment.ts";
import type { AssessmentIssue } from "../assessment/assessmentFacts.ts";
import { type RigStrengths, rigStrengths } from "../strengths/rigStrengths.ts";
import { type Knob, knobText, knobValues, withValue } from "./knob.ts";

/** What is known besides the rig's document. */
export type KnownBesides = Omit<Assessment, "rig">;

/** A rig of a sweep, before its strengths are worked out. */
export interface SweptRig {
  /** One per knob, in its unit. */
  readonly values: readonly number[];
  /** What the point changes, as it would be written; by the knob's name. */
  readonly change: Readonly<Record<string, string>>;
  /** What runs are made of: points that differ by months alone share theirs. */
  readonly assessed: Assessed;
  /** The rig on its day, where days are swept. */
  readonly later?: Rig;
}

export interface SweepPoint extends Omit<SweptRig, "later"> {
  /** What its parts hold, on its day. */
  readonly strengths: RigStrengths;
}

/** A value with which the rig is none. */
export interface BadPoint {
  readonly values: readonly number[];
  readonly change: Readonly<Record<string, string>>;
  readonly issues: readonly AssessmentIssue[];
}

export interface SweepPoints {
  readonly points: readonly SweepPoint[];
  readonly bad: readonly BadPoint[];
}

export interface PointsQuestion {
  /** The rig's document as it is written. */
  readonly document: unknown;
  readonly known: KnownBesides;
  readonly knobs: readonly Knob[];
  /** Points along each knob. */
  readonly counts: readonly number[];
}

export function sweepPoints(question: PointsQuestion): SweepPoints {
  const { rigs, bad } = allSweptRigs(question);
  return { points: rigs.map(sweepPoint), bad };
}

/** All points at once, for few points. */
export function allSweptRigs(question: PointsQuestion): {
  readonly rigs: readonly SweptRig[];
  readonly bad: readonly BadPoint[];
} {
  const all = [...sweptRigs(question)];
  return {
    rigs: all.flatMap((one) => ("issues" in one ? [] : [one])),
    bad: all.flatMap((one) => ("issues" in one ? [one] : [])),
  };
}

/** One rig after the other, so that a page can breathe between them. */
export function* sweptRigs({ document, known, knobs, counts }: PointsQuestion): Generator<SweptRig | BadPoint, void> {
  for (const values of combinations(knobs.map((knob, k) => knobValues(knob, counts[k]!)))) {
    const change = Object.fromEntries(knobs.map((knob, k) => [knob.name, knobText(knob, values[k]!)]));
    yield { values, change, ...rigAt(document, known, knobs, values) };
  }
}

export function sweepPoint({ later, ...point }: SweptRig): SweepPoint {
  const { rig, tests } = point.assessed;
  return { ...point, strengths: rigStrengths(later ?? rig, tests) };
}

/** The last knob runs fastest. */
export function combinations(lists: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return lists.reduce<readonly (readonly number[])[]>(
    (all, list) => all.flatMap((before) => list.map((value) => [...before, value])),
    [[]],
  );
}

/** A month is the twelfth part of a year of 365.25 days. */
const DAYS_A_MONTH = 365.25 / 12;

function rigAt(
  document: unknown,
  known: KnownBesides,
  knobs: readonly Knob[],
  values: readonly number[],
): Pick<SweptRig, "assessed" | "later"> | { readonly issues: readonly AssessmentIssue[] } {
  const changed = knobs.reduce((done, knob, k) => withValue(done, knob, values[k]!), document);
  const reading = readRig(changed);
  if (!reading.ok) return { issues: reading.issues };
  const assessment: Assessment = { ...known, rig: reading.rig };
  const taken = assess(assessment);
  if (!taken.ok) return { issues: taken.issues };
  const { assessed } = taken;
  const months = knobs.findIndex(({ kind }) => kind === "months");
  if (months < 0) return { assessed };
  const day = addDays(readDate(known.on!)!, Math.round(values[months]! * DAYS_A_MONTH));
  // As take-down dates do it: the loads are those of the first day, and only strengths change with the days.
  return { assessed, later: rigOnLaterDays(assessment)!(day) };
}
