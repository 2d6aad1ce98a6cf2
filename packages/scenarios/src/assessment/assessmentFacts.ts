/** What can be wrong with an assessment, by code, with the values that each sentence has. */
import { type FactDay, type FactsOf, type FactValue, factMaker, type Issue, type NoValues } from "@secondline/rig";
import type { RecordFact } from "@secondline/strength";

export interface AssessmentFacts {
  "expected.day": NoValues;
  "expected.fromDay": { readonly date: string };
  "expected.oneJudgement": NoValues;
  "expected.part": NoValues;
  "expected.inRig": { readonly name: string };
  "expected.plainNumberRange": { readonly example: string };
  "got.partTwice": { readonly part: string };
  "got.noRig": NoValues;
  "got.otherRigs": { readonly names: FactValue };
  "day.wanted": NoValues;
  "day.form": { readonly day: string; readonly expected: FactValue };
  "day.beforeRecord": { readonly day: FactDay; readonly begins: FactDay };
  "judgement.twice": { readonly part: string };
  "judgement.noPart": { readonly part: string; readonly parts: FactValue };
  "record.otherRig": { readonly record: string; readonly rig: string };
  "record.otherRigs": { readonly record: string; readonly rig: string; readonly names: FactValue };
}

/** A fault of an assessment, or of the rig or the record in it. */
export type AssessmentFact = FactsOf<AssessmentFacts> | RecordFact;
export type AssessmentIssue = Issue<AssessmentFact>;

export const assessmentFact = factMaker<AssessmentFacts>();
