/** Says the sentences of the help of the terminal: its commands, their options, and faults of a command line. */
import { saying } from "../saying.ts";
import { HELP_ENGLISH } from "./helpEnglish.ts";

export type HelpKey = keyof typeof HELP_ENGLISH;
export const sayHelp = saying(HELP_ENGLISH);
