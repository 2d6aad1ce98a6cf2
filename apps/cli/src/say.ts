/** All sentences: a command loads them all. */
import { english } from "@secondline/words";
import { sayLaterIn } from "@secondline/words/later";

export const say = sayLaterIn(english);
