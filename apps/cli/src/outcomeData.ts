/** An outcome as data: its facts, and beside them the sentences that other faces show. */

import type { Rig } from "@secondline/rig";
import type { Outcome, Outlook } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { facts } from "@secondline/words/facts";
import { tableWords } from "@secondline/words/tables";
import { untilWords } from "@secondline/words/until";
import { say } from "./say.ts";

export function outcomeData(rig: Rig, outcome: Outcome, outlook?: Outlook) {
  return {
    ...outcome,
    ...(outlook ? { outlook } : {}),
    sentence: words.verdict(rig, outcome),
    words: {
      taken: words.taken(rig, outcome),
      reasons: outcome.reasons.map((reason) => words.reason(rig, outcome, reason)),
      singles: words.singles(rig, outcome),
      ...optional("likelierFirst", words.likelierFirst(rig, outcome)),
      ...(outlook ? { until: untilWords.sentence(rig, outlook, outcome) } : {}),
      facts: facts(words.language, rig, outcome, outlook),
      follows: tableWords.follows(rig, outcome),
      parts: Object.fromEntries(outcome.parts.map((part) => [part.id, words.partTitle(rig, part)])),
      whatIfs: outcome.whatIfs.map((one) => ({
        title: words.eventTitle(rig, one.whatIf),
        fate: words.fate(rig, one),
      })),
      cautions: words.cautions(rig, outcome.cautions),
    },
  };
}

const optional = (key: string, text: string | undefined) => (text === undefined ? {} : { [key]: text });

/** Runs that could not be computed, one line each. */
export function failedRuns(rig: Rig, outcome: Outcome): readonly string[] {
  const failed = outcome.search.gaps.flatMap((gap) => (gap.kind === "failed" ? gap.events : []));
  return failed.map((index) => {
    const { whatIf, trouble } = outcome.whatIfs[index]!;
    return `${words.eventTitle(rig, whatIf)}: ${trouble ? words.trouble(rig, trouble) : say("trouble.draw")}`;
  });
}
