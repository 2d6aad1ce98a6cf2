/** The pseudo-language writes numbers and dates unlike English, so that one that is made without the language stands out. */
export const CODE = "en-XA";
export const DATES = "de";
export const LISTS = "es";
export const SEMICOLON = " ; ";
export const DECIMAL: string = ",";
