/** Says the help of the terminal: what its commands and their options do, and what is wrong with a command line. */
import { saying } from "../saying.ts";
import { HELP_ENGLISH } from "./helpEnglish.ts";

export type HelpKey = keyof typeof HELP_ENGLISH;
export const sayHelp = saying(HELP_ENGLISH);
