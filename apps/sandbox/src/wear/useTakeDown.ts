import type { TakeDown } from "@secondline/strength";
import { useMemo } from "react";
import { useSandbox } from "../state/useSandbox.ts";
import type { Outlook } from "./CalendarPaper.tsx";
import { dayOf } from "./days.ts";
import { calendarWords, type Today, todayOf } from "./takeDownWords.ts";
import { type Answer, latestOf, useAnalysis } from "./useAnalysis.ts";
import { useFits, useWear } from "./useWear.ts";

/** Surest and central answer: the band about the date at the chosen confidence. */
const STRICT = 0.99;
const CENTRAL = 0.5;

export interface TakeDowns {
  readonly chosen: TakeDown;
  readonly strict: TakeDown;
  readonly central: TakeDown;
  readonly confidence: number;
}

export type TakeDownState =
  | { readonly kind: "noFit" }
  | { readonly kind: "noStudy" }
  | { readonly kind: "ready"; readonly answer: Answer<TakeDowns>; readonly old: boolean; readonly today: Today };

/** Until when the rig in hand may stay up, from the loads of its last study. */
export function useTakeDown(): TakeDownState {
  const written = useWear((state) => state.good.written);
  const on = useWear((state) => state.on);
  const confidence = useWear((state) => state.confidence);
  const log = useWear((state) => state.history.present.log);
  const useTests = useWear((state) => state.history.present.useTests);
  const rig = useSandbox((state) => state.document.rig);
  const version = useSandbox((state) => state.document.rigVersion);
  const verdict = useSandbox((state) => state.run.verdict);
  const fits = useFits();
  const usable = fits && verdict !== undefined && verdict.rig.name === rig.name;
  const key = useMemo(
    () => ({ written, on, confidence, tests: useTests ? log.tests : [], rig, verdict, usable }),
    [written, on, confidence, useTests, log, rig, verdict, usable],
  );
  const answer = useAnalysis<TakeDowns>(
    key,
    usable
      ? async (analysis) => {
          const { outcome } = verdict;
          // As the verdict does: a load known to within ± counts at its upper end.
          const loads = Object.fromEntries(
            outcome.parts.map((part) => [part.id, part.load + (part.loadUncertainty ?? 0)]),
          );
          const input = {
            rig,
            record: written,
            on,
            loads,
            requiredFactor: outcome.requiredFactor,
            confidences: [confidence, STRICT, CENTRAL],
            tests: key.tests,
          };
          const [chosen, strict, central] = await analysis.takeDowns(input);
          if (!chosen || !strict || !central) throw new Error("the computing thread gave no date");
          return { chosen, strict, central, confidence };
        }
      : undefined,
  );
  if (!fits) return { kind: "noFit" };
  if (!usable) return { kind: "noStudy" };
  return { kind: "ready", answer, old: verdict.rigVersion !== version, today: todayOf(verdict.outcome) };
}

/** The date as the calendar draws it. */
export function outlookOf(state: TakeDownState): Outlook | undefined {
  const found = state.kind === "ready" ? latestOf(state.answer) : undefined;
  if (!found) return undefined;
  const { chosen, strict, central, confidence } = found;
  const days = { day: dayOf(chosen.date), strict: dayOf(strict.date), central: dayOf(central.date) };
  return { ...days, words: calendarWords(chosen), confidence };
}
