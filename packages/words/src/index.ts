import { english } from "./language.ts";
import { createWords } from "./words.ts";

export { broughtIn } from "./broughtEnglish.ts";
export type { NamedValue } from "./factWords.ts";
export { english, type Key, type Language, type Say } from "./language.ts";
export { listed } from "./lists.ts";
export type { BreaksTold, Moment, Moments } from "./momentWords.ts";
export { tellBasis } from "./noteWords.ts";
export { capital, lowered, weakness } from "./partNames.ts";
export * as quantity from "./quantity.ts";
export { materialName, stockName } from "./stockNames.ts";
export { createWords, type Words } from "./words.ts";

/** The words of English, which are always there. */
export const englishWords = createWords(english);
