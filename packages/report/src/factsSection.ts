/** The answer in a few lines: drop, height left, pull on the person, the weakest part, parts without a second, blanks, date. */
import { facts, recordFacts } from "@secondline/words/facts";
import { type Content, type Html, tableOf } from "./html.ts";
import type { ReportPage } from "./page.ts";

export function factsSection({ words, rig, outcome, outlook }: ReportPage): readonly Html[] {
  const all = [...facts(words.language, rig, outcome, outlook), ...recordFacts(words.language, rig, outcome)];
  const rows = all.map(({ name, value }): Content[] => [name, value]);
  return [tableOf(words.say("head.facts"), [], rows, [], "facts")];
}
