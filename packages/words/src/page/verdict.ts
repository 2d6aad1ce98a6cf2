/** Says the sentences behind the verdict, and of the page after its first sight. */
import { saying } from "../saying.ts";
import { VERDICT_ENGLISH } from "./verdictEnglish.ts";

export const sayVerdict = saying(VERDICT_ENGLISH);
