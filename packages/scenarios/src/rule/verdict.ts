/** The verdict: one rule over margins, falls, the pull on the person and what the search leaves open. */
import type { PartId } from "@secondline/rig";
import type { CompleteSearch, Gap } from "../search/complete.ts";
import type { FallFacts } from "./fall.ts";
import { gradeOf, type PartMargins } from "./margins.ts";
import type { PersonMargin } from "./person.ts";

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
  /** Somebody must look, or put right what does not fit, before anything may hold. */
  | { readonly kind: "withheld"; readonly what: string }
  | { readonly kind: "gap"; readonly gap: Gap }
  /** No run loaded these parts, though everything was run. */
  | { readonly kind: "notLoaded"; readonly parts: readonly PartId[] };

export interface Finding {
  readonly verdict: Verdict;
  /** Gravest first; none when it holds. */
  readonly reasons: readonly Reason[];
}

export interface Findings {
  readonly parts: readonly PartMargins[];
  readonly falls: FallFacts;
  readonly person?: PersonMargin;
  /** Required height of the feet above the ground [m]. */
  readonly requiredClearance: number;
  readonly withholds: readonly string[];
}

/** What fails and what is thin: found by any search, however small. Least share of what is required first. */
export function faultsOf(found: Findings): { readonly fails: readonly Reason[]; readonly thin: readonly Reason[] } {
  const { parts, falls, person, requiredClearance, withholds } = found;
  const ranked = [...parts].sort((a, b) => rank(a) - rank(b));
  const id = ({ part }: PartMargins) => part.id as PartId;
  const graded = (grade: string) => ranked.filter((one) => gradeOf(one) === grade);
  const near = falls.leastFeet && falls.leastFeet.height > 0 && falls.leastFeet.height < requiredClearance;
  return {
    fails: [
      ...graded("fails").map((one): Reason => ({ kind: "partFails", part: id(one) })),
      ...falls.notCaught.slice(0, 1).map((event): Reason => ({ kind: "notCaught", event })),
      ...groundFirst(falls).map((event): Reason => ({ kind: "ground", event })),
      ...(person?.grade === "fails" ? [{ kind: "pullTooHard" } as const] : []),
    ],
    thin: [
      ...graded("thin").map((one): Reason => ({ kind: "partThin", part: id(one) })),
      ...(near
        ? [
            {
              kind: "groundNear",
              event: falls.leastFeet!.event,
              height: falls.leastFeet!.height,
              required: requiredClearance,
            } as const,
          ]
        : []),
      ...(person?.grade === "thin" ? [{ kind: "pullHard" } as const] : []),
      ...withholds.map((what): Reason => ({ kind: "withheld", what })),
    ],
  };
}

/** The event that brings the walker lowest, of those that bring the feet to the ground. */
function groundFirst({ onGround, leastFeet }: FallFacts): readonly number[] {
  if (onGround.length === 0) return [];
  return [leastFeet && onGround.includes(leastFeet.event) ? leastFeet.event : onGround[0]!];
}

const rank = ({ governing }: PartMargins) =>
  governing ? governing.margin / governing.required : Number.POSITIVE_INFINITY;

/** A verdict of a search that has not looked at everything: it cannot say that a rig holds. */
export function partialFinding(found: Findings, gaps: readonly [Gap, ...Gap[]]): Finding {
  const { fails, thin } = faultsOf(found);
  const open = gaps.map((gap): Reason => ({ kind: "gap", gap }));
  if (fails.length > 0) return { verdict: "fails", reasons: [...fails, ...thin, ...open] };
  if (thin.length > 0) return { verdict: "thin", reasons: [...thin, ...open] };
  return { verdict: "open", reasons: open };
}

/** A verdict of everything. */
export function completeFinding(found: Findings, _search: CompleteSearch): Finding {
  const { fails, thin } = faultsOf(found);
  const unloaded = found.parts.filter((one) => gradeOf(one) === "notLoaded").map(({ part }) => part.id as PartId);
  const notLoaded: readonly Reason[] = unloaded.length > 0 ? [{ kind: "notLoaded", parts: unloaded }] : [];
  if (fails.length > 0) return { verdict: "fails", reasons: [...fails, ...thin, ...notLoaded] };
  if (thin.length > 0 || notLoaded.length > 0) return { verdict: "thin", reasons: [...thin, ...notLoaded] };
  return { verdict: "holds", reasons: [] };
}
