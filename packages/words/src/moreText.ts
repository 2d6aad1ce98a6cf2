/** The end of a list that would be too long. A file of its own: the first load does without it. */
import { MORE_ENGLISH } from "./moreEnglish.ts";
import { thousands } from "./quantity.ts";
import { saying } from "./saying.ts";

const say = saying(MORE_ENGLISH);

/** "… and 79,980 more". */
export const moreText = (more: number): string => say("more", { count: thousands(more) });
