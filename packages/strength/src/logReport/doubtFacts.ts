/** Reasons to doubt a group's numbers, by code, with the values that each sentence needs. */
import { type FactsOf, type FactValue, factMaker, type NoValues } from "@secondline/rig";

export interface DoubtFacts {
  "doubt.fewTests": { readonly count: number };
  "doubt.severalTests": { readonly count: number };
  "doubt.censored": { readonly count: number; readonly of: number };
  "doubt.copies": { readonly count: number; readonly of: number };
  "doubt.outlier": { readonly load: FactValue };
  "doubt.batches": NoValues;
  "doubt.batchesUnchecked": NoValues;
  "doubt.oneBatch": NoValues;
  "doubt.noBatches": NoValues;
  "doubt.modes": { readonly list: FactValue };
  "doubt.distribution": NoValues;
  "doubt.noFit": { readonly reason: FactValue };
  "doubt.spread": { readonly percent: FactValue };
}

export type DoubtFact = FactsOf<DoubtFacts>;

export const doubtFact = factMaker<DoubtFacts>();
