/** What the site card of the current state is made of, as soon as its verdict and the days that follow from it are there. */
import type { CardQuestion } from "@secondline/scenarios";
import { type CardDates, cardInput, foundOf } from "@secondline/workbench";
import { useEffect, useMemo } from "react";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { useAnalysis } from "../wearInHand/useAnalysis.ts";
import { useWear } from "../wearInHand/useWear.ts";

export type CardState =
  /** The verdict is looked for, or there can be none. */
  | { readonly kind: "searching" }
  | { readonly kind: "dating" }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "ready"; readonly question: Omit<CardQuestion, "made"> };

export function useCard(): CardState {
  const written = useWear((state) => state.good.written);
  const { assessed, known } = useSandbox((state) => state.assessment);
  const rig = useSandbox((state) => state.document.rig);
  const found = useSandbox(foundOf);
  const { lookOn } = useActions();
  useEffect(() => void lookOn(), [lookOn]);
  const isDated = found !== undefined && assessed.taken.wear !== undefined;
  const key = useMemo(() => ({ written, known, assessed, found }), [written, known, assessed, found]);
  const { job } = useAnalysis<CardDates & { readonly of: typeof key }>(
    key,
    isDated
      ? async (analysis) => {
          const input = cardInput({ rig, on: known.on }, written, assessed, found);
          return { ...(await analysis.card(input)), of: key };
        }
      : undefined,
  );
  return useMemo(() => {
    if (!found) return { kind: "searching" };
    const { outcome } = found;
    if (!isDated) return { kind: "ready", question: { assessed, outcome } };
    if (job.kind === "failed") return { kind: "failed", message: job.message };
    // Dates of another state are none.
    if (job.kind !== "done" || job.value.of !== key) return { kind: "dating" };
    const { of: _, ...dates } = job.value;
    return { kind: "ready", question: { assessed, outcome, ...dates } };
  }, [found, isDated, assessed, job, key]);
}
