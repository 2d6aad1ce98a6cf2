/** How the language writes what is no sentence: its code (BCP 47), the locales by which it writes dates and lists, its semicolon and its decimal sign. */
export const LANGUAGE_CODE = "en";
export const DATE_LOCALE = "en-GB";
export const LIST_LOCALE = "en-GB";
/** Between things that have commas of their own. */
export const SEMICOLON: string = "; ";
export const DECIMAL_SIGN: string = ".";
