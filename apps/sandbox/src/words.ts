/** The language of the page. Sentences, part names and numbers of a rig come from here and are made nowhere else. */
import { englishWords, quantity } from "@secondline/words";

export const words = englishWords;
export { quantity };
