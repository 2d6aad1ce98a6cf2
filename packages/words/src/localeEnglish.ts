/** How the language writes what is no sentence: its code (BCP 47), the locales by which it writes dates and lists, its semicolon and its decimal sign. */
export const CODE = "en";
export const DATES = "en-GB";
export const LISTS = "en-GB";
/** Between things that have commas of their own. */
export const SEMICOLON: string = "; ";
export const DECIMAL: string = ".";
