/** Faults of a file of answers for a new rig, by code, with the values that each sentence needs. */
import { type FactValue, factMaker, type NoValues } from "@secondline/rig";

export interface AnswersFacts {
  "noun.answers": NoValues;
  "expected.profile": NoValues;
  "expected.stocks": NoValues;
  "expected.drawn": NoValues;
  "expected.confirmed": { readonly list: FactValue };
  "expected.answers": NoValues;
  "expected.answer": NoValues;
  "answers.needed": { readonly at: string; readonly expected: FactValue; readonly got: FactValue };
  "answers.fileNeeded": { readonly expected: FactValue; readonly got: FactValue };
  "answers.unknown": { readonly key: string };
  "answers.known": { readonly list: FactValue };
}

export const answersFact = factMaker<AnswersFacts>();
