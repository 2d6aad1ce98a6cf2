/** Words of beginning a rig and of confirming what was taken over: apart from the rest, for the first load needs none of them. */
import type { Rig } from "@secondline/rig";
import { english, filled, type Language, sayIn, type Values } from "./language.ts";
import { NEW_RIG_ENGLISH, type NewRigKey } from "./newRigEnglish.ts";
import { valueNames } from "./valueNames.ts";

export type { NewRigKey } from "./newRigEnglish.ts";

export const sayNewRig = (key: NewRigKey, values: Values = {}): string => filled(NEW_RIG_ENGLISH[key], values);

export type NewRigWords = ReturnType<typeof createNewRigWords>;

export function createNewRigWords(language: Language) {
  return {
    say: sayNewRig,
    /** Names of values at these paths, those of one part together. */
    values: (rig: Rig, paths: readonly string[]) => valueNames(sayIn(language), rig, paths),
  };
}

export const newRigWords = createNewRigWords(english);
