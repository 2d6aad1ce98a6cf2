/** What the site card of the current state is made of, as soon as its verdict and the days that follow from it are there. */
import { type CardState, cardInput, cardState, type DatesOf, foundOf, isDated } from "@secondline/workbench";
import { useEffect, useMemo } from "react";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { useAnalysis } from "../wearInHand/useAnalysis.ts";
import { useWear } from "../wearInHand/useWear.ts";

export function useCard(): CardState {
  const written = useWear((state) => state.good.written);
  const { assessed, known } = useSandbox((state) => state.assessment);
  const rig = useSandbox((state) => state.document.rig);
  const found = useSandbox(foundOf);
  const { lookOn } = useActions();
  useEffect(() => void lookOn(), [lookOn]);
  const key = useMemo(() => ({ written, known, assessed, found }), [written, known, assessed, found]);
  const { job } = useAnalysis<DatesOf>(
    key,
    isDated(assessed, found)
      ? async (analysis) => {
          const input = cardInput({ rig, on: known.on }, written, assessed, found);
          return { of: key, dates: await analysis.card(input) };
        }
      : undefined,
  );
  return useMemo(() => cardState(assessed, found, job, key), [assessed, found, job, key]);
}
