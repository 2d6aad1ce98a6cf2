/** What an assessment has to say besides faults, by code, with the values that each sentence has. */
import { type FactDay, type FactValue, factMaker, type NoValues } from "@secondline/rig";

export interface AssessmentNotes {
  "judgement.displaced": {
    readonly part: string;
    readonly now: FactValue;
    readonly was: FactValue;
    readonly reason: FactValue;
  };
  "judgement.doubt": NoValues;
  "judgement.times": { readonly factor: number };
  "tests.later": { readonly count: number; readonly day: FactDay };
}

export const assessmentNote = factMaker<AssessmentNotes>();
