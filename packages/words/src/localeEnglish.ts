/**
 * The language apart from its sentences: its code (BCP 47), the locales of its dates and lists, its semicolon and its decimal
 * sign.
 */
export const LANGUAGE_CODE = "en";
export const DATE_LOCALE = "en-GB";
export const LIST_LOCALE = "en-GB";
/** Between items that have commas of their own. */
export const SEMICOLON: string = "; ";
export const DECIMAL_SIGN: string = ".";
