/** How far the search for the verdict is, in words. */
import type { Outcome, StudyProgress } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { sayPage } from "@secondline/words/page/page";
import { eventsLookedAt } from "../inHand/soFar.ts";
import type { RunSlice } from "../inHand/state.ts";

/** For how many of the loaded parts more runs would change nothing. */
export function settledWords({ parts, search }: Outcome, runs = search.runs): string {
  const loaded = parts.filter(({ governing }) => governing);
  return words.say("study.settled", {
    runs,
    settled: loaded.filter((part) => part.settled).length,
    parts: loaded.length,
  });
}

/** About the share of the time that the first of the two looks takes [-]. */
const QUICK_SHARE = 0.1;

export interface StudyTold {
  /** Share done of both looks together, 0 to 1 [-]. */
  readonly done: number;
  /** "Computing: 12 of 44 what-ifs so far" */
  readonly doing: string;
}

/** While it is busy, or waits to begin. */
export function studyTold({
  study,
  effort,
  verdict: { soFar },
}: Pick<RunSlice, "study" | "effort" | "verdict">): StudyTold {
  const progress: StudyProgress = study.kind === "busy" ? study.progress : { done: 0 };
  const done = effort === "quick" ? QUICK_SHARE * progress.done : QUICK_SHARE + (1 - QUICK_SHARE) * progress.done;
  const looked = eventsLookedAt({ ...progress, ...(soFar && { soFar }) });
  if (!looked) return { done, doing: sayPage("studyState.computing") };
  const { run, of } = looked;
  if (run < of) return { done, doing: unended(words.say("verdict.computing", { run, of })) };
  const { made, soFar: latest } = progress;
  return { done, doing: latest ? unended(settledWords(latest, made)) : sayPage("studyState.drawing", { of }) };
}

const unended = (sentence: string): string => sentence.replace(/\.$/, "");

/** What a search that was stopped has found. */
export function stoppedWords(soFar: Outcome | undefined): string {
  const looked = eventsLookedAt({ ...(soFar && { soFar }) });
  if (!looked) return sayPage("studyState.noneCounted");
  const found = soFar && soFar.verdict !== "open" ? "" : sayPage("studyState.nothingFoundYet");
  return sayPage("studyState.counted", { found, run: looked.run, of: looked.of });
}

/** A search that fails altogether may give a reason per what-if. */
export const shortReason = (text: string): string => (text.length > 240 ? `${text.slice(0, 240)}…` : text);
