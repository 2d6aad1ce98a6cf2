import { foundOf, outcomeOf } from "@secondline/workbench";
import { type DatedOutlook, type TakeDownState, usable } from "@secondline/workbench/record";
import { useMemo } from "react";
import { useSandbox } from "../state/useSandbox.ts";
import { useAnalysis } from "../wearInHand/useAnalysis.ts";
import { useFits, useWear } from "../wearInHand/useWear.ts";

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
  const answer = useAnalysis<DatedOutlook>(
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
