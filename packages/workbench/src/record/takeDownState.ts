/** Until when the open rig may stay up, as far as it is known. */
import type { AssessmentIssue, Outcome, Outlook, SearchResult } from "@secondline/scenarios";
import type { SandboxState } from "../inHand/state.ts";
import type { Job } from "../job/job.ts";

/** Until when the open rig may stay up, or why nobody can say. */
export type TakeDownState =
  /** The record says nothing of the rig on this day. */
  | { readonly kind: "noFit" }
  /** A made-up record, and a rig that is none. */
  | { readonly kind: "unlike" }
  | { readonly kind: "leftOut" }
  | { readonly kind: "unfit"; readonly issues: readonly AssessmentIssue[] }
  /** The verdict is still looked for; with what is found so far. */
  | { readonly kind: "searching"; readonly soFar: Outcome | undefined }
  /** The verdict of this very day, and the days that follow from it. */
  | ({ readonly kind: "ready"; readonly outcome: Outcome } & DatesInHand);

/** Until they are worked out anew, `latest` are those of the state before. */
interface DatesInHand {
  readonly job: Job<DatedOutlook>;
  readonly latest: DatedOutlook | undefined;
}

/** Dates with the search that they rest on: while others are worked out, these are not of the current state. */
export interface DatedOutlook {
  readonly outlook: Outlook;
  readonly found: SearchResult;
}

/** Whether record and tests can be used for a date, and if not, why. */
export type Usable = Exclude<TakeDownState["kind"], "searching" | "ready"> | "used";

export function usable({ assessment: { assessed, choice, leftOut, issues } }: SandboxState, fits: boolean): Usable {
  if (issues.length > 0) return "unfit";
  if (!fits) return "noFit";
  if (assessed.taken.wear) return "used";
  return leftOut && choice ? "leftOut" : "unlike";
}

/** The dates, once they are those of the current verdict. */
export function outlookOf(state: TakeDownState): Outlook | undefined {
  const dated = state.kind === "ready" ? state.latest : undefined;
  return dated && state.kind === "ready" && dated.found.outcome === state.outcome ? dated.outlook : undefined;
}
