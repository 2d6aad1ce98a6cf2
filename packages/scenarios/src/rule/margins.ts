/**
 * The margin of every part: 1 ÷ the largest over the events of E over R, place by place, for what is expected and for what comes
 * after a failure. The one function that verdicts, take-down dates, layouts, lessons and reports ask.
 */
import type { PartId, Rig } from "@secondline/rig";
import type { PartStrength } from "@secondline/strength";
import { EVENT_CLASSES, type EventClass } from "../events/eventKind.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";
import { type Demand, demandsOn, type EventRuns } from "./demand.ts";
import { judgedParts, lengthOf } from "./utilisation.ts";

export type RequiredFactors = Readonly<Record<EventClass, number>>;

export const requiredFactors = (rig: Rig): RequiredFactors => ({
  expected: rig.requiredFactor.value,
  afterFailure: rig.requiredAfterFailure,
});

/** A part's margin against the events of one class. */
export interface ClassMargin {
  /** r, and its 95 % interval from the number of runs [-]. */
  readonly margin: number;
  readonly low: number;
  readonly high: number;
  readonly required: number;
  readonly demand: Demand;
}

export interface PartMargins {
  readonly part: PartStrength;
  /** One per event that loads it. */
  readonly demands: readonly Demand[];
  readonly byClass: Readonly<Partial<Record<EventClass, ClassMargin>>>;
  /** Of the two class margins the one nearest to its required margin, or farthest below it; absent: no run loaded the part. */
  readonly governing?: ClassMargin;
}

/** Margins of all parts but the tapes, in the order of the load's way. */
export function partMargins(rig: Rig, strengths: RigStrengths, events: readonly EventRuns[]): readonly PartMargins[] {
  const required = requiredFactors(rig);
  return judgedParts(rig, strengths).map((part) => {
    const demands = demandsOn(part, events, lengthOf(strengths, part));
    const byClass = Object.fromEntries(
      EVENT_CLASSES.flatMap((name) => {
        const worst = worstOf(demands.filter((one) => one.class === name));
        return worst ? [[name, classMargin(worst, required[name])]] : [];
      }),
    ) as PartMargins["byClass"];
    const governing = governingOf(Object.values(byClass));
    return { part, demands, byClass, ...(governing ? { governing } : {}) };
  });
}

/** E over R [-]. */
export const demandShare = ({ demand, strength5 }: Demand): number => demand / strength5;

const worstOf = (demands: readonly Demand[]): Demand | undefined =>
  demands.reduce<Demand | undefined>(
    (worst, one) => (!worst || one.rank / one.strength5 > worst.rank / worst.strength5 ? one : worst),
    undefined,
  );

const classMargin = (demand: Demand, required: number): ClassMargin => ({
  margin: 1 / demandShare(demand),
  low: demand.strength5 / demand.high,
  high: demand.strength5 / demand.low,
  required,
  demand,
});

/** The share of what is required that a margin is: below 1 it is thin. */
export const keptShare = ({ margin, required }: ClassMargin): number => margin / required;

function governingOf(margins: readonly ClassMargin[]): ClassMargin | undefined {
  return margins.reduce<ClassMargin | undefined>((least, one) => {
    if (!least) return one;
    // What does not even hold its load comes before what only misses its factor.
    const [a, b] = [one.margin < 1, least.margin < 1];
    if (a !== b) return a ? one : least;
    if (a && b) return one.margin < least.margin ? one : least;
    return keptShare(one) < keptShare(least) ? one : least;
  }, undefined);
}

/** Whether the interval of a margin lies clear of 1 and of the required margin: then more runs would not change what is said. */
export const isSettled = ({ low, high, required }: ClassMargin): boolean =>
  [1, required].every((limit) => low > limit || high < limit);

/** What is certain already: the whole interval of a margin lies below. */
export function sureGrade({ byClass }: PartMargins): "fails" | "thin" | "open" {
  const all = Object.values(byClass);
  if (all.some(({ high }) => high < 1)) return "fails";
  return all.some(({ high, required }) => high < required) ? "thin" : "open";
}

/**
 * What a part of a search says: it fails where that is certain, and is thin where it looks like it. With few runs E is taken on the
 * safe side by much, and a failing that more runs would take back is none.
 */
export function partialGrade(one: PartMargins): "fails" | "thin" | "open" {
  const sure = sureGrade(one);
  if (sure !== "open") return sure;
  return ["fails", "thin"].includes(gradeOf(one)) ? "thin" : "open";
}

/** Unsettled: it keeps what is required, but with so few runs it may as well not. */
export type PartGrade = "fails" | "thin" | "unsettled" | "keeps" | "notLoaded";

/** What a part's margins say about the part, whatever remains to be run. */
export function gradeOf({ byClass }: PartMargins): PartGrade {
  const all = Object.values(byClass);
  if (all.length === 0) return "notLoaded";
  if (all.some(({ margin }) => margin < 1)) return "fails";
  if (all.some((one) => keptShare(one) < 1)) return "thin";
  return all.some(({ low, required }) => low < required) ? "unsettled" : "keeps";
}

/** The part with the least ratio of margin to required margin. */
export function leastOf(parts: readonly PartMargins[]): PartId | undefined {
  const loaded = parts.filter((one) => one.governing);
  if (loaded.length === 0) return undefined;
  const share = (one: PartMargins) => one.governing!;
  const least = loaded.reduce((a, b) => (governingOf([share(a), share(b)]) === share(b) ? b : a));
  return least.part.id as PartId;
}
