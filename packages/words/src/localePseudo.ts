/** The pseudo-language writes numbers and dates unlike English, so that a number made without the language stands out. */
export const LANGUAGE_CODE = "en-XA";
export const DATE_LOCALE = "de";
export const LIST_LOCALE = "es";
export const SEMICOLON = " ; ";
export const DECIMAL_SIGN: string = ",";
