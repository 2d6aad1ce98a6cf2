/** The day until which a rig may stay up, by the rule and the runs of its verdict. */
import {
  type Outlook,
  type OutlookQuestion,
  rigOnLaterDays,
  type SearchResult,
  takeDownDates,
} from "@secondline/scenarios";
import type { ReadAssessment } from "./assessment.ts";

/** Undefined without a day to begin with. */
export function takeDownQuestion(
  { assessment, assessed }: Pick<ReadAssessment, "assessment" | "assessed">,
  { demands, outcome }: SearchResult,
): OutlookQuestion | undefined {
  const rigOn = rigOnLaterDays(assessment);
  if (!rigOn || assessment.on === undefined) return undefined;
  return { on: assessment.on, rigOn, tests: assessed.tests, events: demands, whole: outcome.search.complete };
}

/** Undefined without a day to begin with. */
export function computedOutlook(read: ReadAssessment, found: SearchResult): Outlook | undefined {
  const question = takeDownQuestion(read, found);
  return question && takeDownDates(question);
}
