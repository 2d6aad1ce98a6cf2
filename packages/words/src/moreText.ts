/** The end of a list that would be too long, in a file of its own because the first load does not need it. */
import { MORE_ENGLISH } from "./moreEnglish.ts";
import { thousands } from "./quantity.ts";
import { saying } from "./saying.ts";

const say = saying(MORE_ENGLISH);

/** "… and 79,980 more". */
export const moreText = (more: number): string => say("more", { count: thousands(more) });
