/** The answer in a few lines: drop, height left, pull on the person, the weakest part, what has no second, blanks, date. */
import { facts } from "@secondline/words/facts";
import { type Content, type Html, tableOf } from "./html.ts";
import type { Page } from "./page.ts";

export function factsSection({ words, rig, outcome, outlook }: Page): readonly Html[] {
  const rows = facts(words.language, rig, outcome, outlook).map(({ name, value }): Content[] => [name, value]);
  return [tableOf(words.say("head.facts"), [], rows, [], "facts")];
}
