/** The verdict: one rule over margins, falls, the pull on the person and what the search leaves open. */
import type { Fact, PartId } from "@secondline/rig";
import type { Lapse } from "@secondline/strength";
import type { CompleteSearch, SearchGap } from "./complete.ts";
import { type FallFacts, groundEvent } from "./fall.ts";
import { gradeOf, type PartMargins, partialGrade, sureGrade } from "./margins.ts";
import { gradeOfPull, type PersonMargin } from "./person.ts";

/** Open: nothing found yet, and not everything looked at. */
export type Verdict = "fails" | "thin" | "open" | "holds";

export type Reason =
  | { readonly kind: "partFails"; readonly part: PartId }
  | { readonly kind: "notCaught"; readonly event: number }
  | { readonly kind: "ground"; readonly event: number }
  | { readonly kind: "pullTooHard" }
  | { readonly kind: "partThin"; readonly part: PartId }
  | { readonly kind: "groundNear"; readonly event: number; readonly height: number; readonly required: number }
  | { readonly kind: "pullHard" }
  /** All is run that was to be, and these keep what is required, but may as well not: more runs would tell. */
  | { readonly kind: "unsettled"; readonly parts: readonly PartId[]; readonly height: boolean; readonly pull: boolean }
  /** What the verdict rests on has lapsed: something happened or an inspection is due, and nobody has judged it since. */
  | { readonly kind: "lapsed"; readonly lapses: readonly Lapse[] }
  /** Somebody must look, or put right what does not fit, before anything may hold. */
  | { readonly kind: "withheld"; readonly what: Fact }
  /** Values at these paths of the rig's file were taken over, and nobody has confirmed them. */
  | { readonly kind: "unconfirmed"; readonly paths: readonly string[] }
  | { readonly kind: "gap"; readonly gap: SearchGap }
  /** No run loaded these parts, though everything was run. */
  | { readonly kind: "notLoaded"; readonly parts: readonly PartId[] };

export interface Finding {
  readonly verdict: Verdict;
  /** Gravest first; none when it holds. */
  readonly reasons: readonly Reason[];
}

/** all: the whole search. some: a part of the search, asked for as such. onTheWay: results so far, of which only the certain is told. */
export type Knowing = "all" | "some" | "onTheWay";

export interface Findings {
  readonly parts: readonly PartMargins[];
  readonly falls: FallFacts;
  readonly person?: PersonMargin;
  /** Required height of the feet above the ground [m]. */
  readonly requiredClearance: number;
  readonly withholds: readonly Fact[];
  readonly lapses: readonly Lapse[];
  /** Paths of values that nobody has confirmed. */
  readonly unconfirmed: readonly string[];
  readonly knowing: Knowing;
}

/** What fails and what is thin: found by any search, however small. Least share of what is required first. */
export function faultsOf(found: Findings): { readonly fails: readonly Reason[]; readonly thin: readonly Reason[] } {
  const { parts, falls, person, requiredClearance, withholds, lapses, unconfirmed, knowing } = found;
  const ranked = [...parts].sort((a, b) => rank(a) - rank(b));
  const gradeIn = { all: gradeOf, some: partialGrade, onTheWay: sureGrade }[knowing];
  const graded = (grade: string) => ranked.filter((one) => gradeIn(one) === grade);
  const sure = knowing === "onTheWay";
  const feet = falls.leastFeet && (sure ? falls.leastFeet.interval[0] : falls.leastFeet.height);
  const near = feet !== undefined && feet > 0 && feet < requiredClearance;
  const pull = person && (sure ? gradeOfPull(person.low) : person.grade);
  return {
    fails: [
      ...graded("fails").map((one): Reason => ({ kind: "partFails", part: id(one) })),
      ...falls.notCaught.slice(0, 1).map((event): Reason => ({ kind: "notCaught", event })),
      ...groundFirst(falls, feet).map((event): Reason => ({ kind: "ground", event })),
      ...(pull === "fails" ? [{ kind: "pullTooHard" } as const] : []),
    ],
    thin: [
      ...(lapses.length > 0 ? [{ kind: "lapsed", lapses } as const] : []),
      ...graded("thin").map((one): Reason => ({ kind: "partThin", part: id(one) })),
      ...(near
        ? [
            {
              kind: "groundNear",
              event: falls.leastFeet!.event,
              height: feet,
              required: requiredClearance,
            } as const,
          ]
        : []),
      ...(pull === "thin" ? [{ kind: "pullHard" } as const] : []),
      ...withholds.map((what): Reason => ({ kind: "withheld", what })),
      ...(unconfirmed.length > 0 ? [{ kind: "unconfirmed", paths: unconfirmed } as const] : []),
    ],
  };
}

const id = ({ part }: PartMargins) => part.id as PartId;

/** The event that brings the feet to the ground, in a run or in one of twenty. */
function groundFirst({ onGround, leastFeet }: FallFacts, feet: number | undefined): readonly number[] {
  const event = groundEvent(onGround, leastFeet?.event);
  if (event !== undefined) return [event];
  return feet !== undefined && feet <= 0 ? [leastFeet!.event] : [];
}

const rank = ({ governing }: PartMargins) =>
  governing ? governing.margin / governing.required : Number.POSITIVE_INFINITY;

/** A verdict of a search that has not looked at everything: it cannot say that a rig holds. */
export function partialFinding(found: Findings, gaps: readonly [SearchGap, ...SearchGap[]]): Finding {
  const { fails, thin } = faultsOf(found);
  const open = gaps.map((gap): Reason => ({ kind: "gap", gap }));
  if (fails.length > 0) return { verdict: "fails", reasons: [...fails, ...thin, ...open] };
  if (thin.length > 0) return { verdict: "thin", reasons: [...thin, ...open] };
  return { verdict: "open", reasons: open };
}

/** What lies so near to a limit that its interval reaches over it. */
function unsettledIn({ parts, falls, person, requiredClearance }: Findings): readonly Reason[] {
  const open = parts.filter((one) => gradeOf(one) === "unsettled").map(id);
  const [height, worst] = [falls.leastFeet?.height ?? 0, falls.leastFeet?.interval[1] ?? 0];
  const near = height >= requiredClearance && worst < requiredClearance;
  const pull = person !== undefined && gradeOfPull(person.high) !== person.grade;
  if (open.length === 0 && !near && !pull) return [];
  return [{ kind: "unsettled", parts: open, height: near, pull }];
}

/** A verdict of everything. */
export function completeFinding(found: Findings, _search: CompleteSearch): Finding {
  const faults = faultsOf(found);
  const { fails } = faults;
  const thin = [...faults.thin, ...unsettledIn(found)];
  const unloaded = found.parts.filter((one) => gradeOf(one) === "notLoaded").map(({ part }) => part.id as PartId);
  const notLoaded: readonly Reason[] = unloaded.length > 0 ? [{ kind: "notLoaded", parts: unloaded }] : [];
  if (fails.length > 0) return { verdict: "fails", reasons: [...fails, ...thin, ...notLoaded] };
  if (thin.length > 0 || notLoaded.length > 0) return { verdict: "thin", reasons: [...thin, ...notLoaded] };
  return { verdict: "holds", reasons: [] };
}
