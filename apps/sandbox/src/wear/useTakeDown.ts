import type { RigIssue } from "@secondline/rig";
import type { Found, Outcome, Outlook } from "@secondline/scenarios";
import { foundOf, type Job, outcomeOf, type SandboxState } from "@secondline/workbench";
import { useMemo } from "react";
import { useSandbox } from "../state/useSandbox.ts";
import { useAnalysis } from "../wearInHand/useAnalysis.ts";
import { useFits, useWear } from "../wearInHand/useWear.ts";

/** Until when the rig in hand may stay up, or why nobody can say. */
export type TakeDownState =
  /** The record says nothing of the rig on this day. */
  | { readonly kind: "noFit" }
  /** A made-up record, and a rig that is none. */
  | { readonly kind: "unlike" }
  | { readonly kind: "leftOut" }
  | { readonly kind: "unfit"; readonly issues: readonly RigIssue[] }
  /** The verdict is still looked for; with what is found so far. */
  | { readonly kind: "searching"; readonly soFar: Outcome | undefined }
  /** The verdict of this very day, and the days that follow from it. */
  | ({ readonly kind: "ready"; readonly outcome: Outcome } & DatesInHand);

/** Until they are worked out anew, `latest` are those of the state before. */
interface DatesInHand {
  readonly job: Job<Dated>;
  readonly latest: Dated | undefined;
}

/** Dates with the search that they rest on: while others are worked out, these are not of the state in hand. */
interface Dated {
  readonly outlook: Outlook;
  readonly found: Found;
}

type Usable = Exclude<TakeDownState["kind"], "searching" | "ready"> | "used";

function usable({ assessment: { assessed, choice, leftOut, issues } }: SandboxState, fits: boolean): Usable {
  if (issues.length > 0) return "unfit";
  if (!fits) return "noFit";
  if (assessed.taken.wear) return "used";
  return leftOut && choice ? "leftOut" : "unlike";
}

export function useTakeDown(): TakeDownState {
  const written = useWear((state) => state.good.written);
  const rig = useSandbox((state) => state.document.rig);
  const tests = useSandbox((state) => state.assessment.assessed.tests);
  const issues = useSandbox((state) => state.assessment.issues);
  const on = useSandbox((state) => state.assessment.known.on);
  const found = useSandbox(foundOf);
  const soFar = useSandbox(outcomeOf);
  const fits = useFits();
  const use = useSandbox((state) => usable(state, fits));
  const asked = use === "used" ? found : undefined;
  const key = useMemo(() => ({ written, on, tests, rig, asked }), [written, on, tests, rig, asked]);
  const answer = useAnalysis<Dated>(
    key,
    asked &&
      (async (analysis) => {
        const { demands: events, outcome } = asked;
        const whole = outcome.search.complete;
        const outlook = await analysis.takeDown({ rig, record: written, on, tests, events, whole });
        return { outlook, found: asked };
      }),
  );
  if (use === "unfit") return { kind: use, issues };
  if (use !== "used") return { kind: use };
  return found ? { kind: "ready", outcome: found.outcome, ...answer } : { kind: "searching", soFar };
}

/** The dates, once they are those of the verdict in hand. */
export function outlookOf(state: TakeDownState): Outlook | undefined {
  const dated = state.kind === "ready" ? state.latest : undefined;
  return dated && state.kind === "ready" && dated.found.outcome === state.outcome ? dated.outlook : undefined;
}
