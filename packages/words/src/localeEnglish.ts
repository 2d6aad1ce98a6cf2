/** How the language writes what is no sentence: its code (BCP 47), the locale by which it writes dates, and its decimal sign. */
export const CODE = "en";
export const DATES = "en-GB";
export const DECIMAL: string = ".";
