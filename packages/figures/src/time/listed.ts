import { sayTime } from "@secondline/words/page/time";

/** "a, b and c". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return sayTime("listed.and", { list: words.slice(0, -1).join(", "), last: words.at(-1)! });
}
