/** The language of the page. Sentences, part names and numbers of a rig come from here and are made nowhere else. */
import { englishWords, quantity, type Words } from "@secondline/words";

export const words: Words = englishWords;
export { quantity };
