/** Says the sentences of the break log on the page. */
import { saying } from "../saying.ts";
import { BREAK_LOG_ENGLISH } from "./breakLogEnglish.ts";

export const sayBreakLog = saying(BREAK_LOG_ENGLISH);
