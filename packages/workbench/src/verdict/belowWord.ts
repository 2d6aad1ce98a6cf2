import type { Outcome, Rig } from "@secondline/scenarios";
import { capital, englishWords as words } from "@secondline/words";

/** The verdict's sentence without the verdict's word, with which it opens: that stands above it. */
export function sentenceBelowWord(rig: Rig, outcome: Outcome): string {
  const [sentence, word] = [words.verdict(rig, outcome), words.verdictWord(outcome)];
  return sentence.startsWith(`${word}: `) ? capital(sentence.slice(word.length + 2)) : sentence;
}
