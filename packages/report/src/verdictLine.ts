/** The verdict, the parts without a second, and the inputs that were taken into account. */
import type { PartOutcome } from "@secondline/scenarios";
import { type Html, raw, tag } from "./html.ts";
import type { ReportPage } from "./page.ts";

const VERDICT_MARK: Readonly<Record<PartOutcome["verdict"], string>> = {
  holds: "●",
  thin: "▲",
  fails: "✕",
  open: "○",
  notLoaded: "–",
};

/** The verdict's shape; the word stands beside it. */
export const verdictMark = (verdict: PartOutcome["verdict"], word?: string): Html =>
  tag("span", word === undefined ? VERDICT_MARK[verdict] : `${VERDICT_MARK[verdict]} ${word}`, {
    class: `verdict ${verdict}`,
  });

const first = (mark: Html, sentence: string): Html => tag("p", [mark, raw(" &nbsp;"), sentence]);

/** The first sentence, and the sentences in smaller type after it. */
function firstSentence(text: string): { readonly sentence: string; readonly rest: string } {
  const [sentence = text] = /^.*?[.](?=\s+[A-Z0-9])/s.exec(text) ?? [];
  return { sentence, rest: text.slice(sentence.length).trim() };
}

export function verdictLine({ words, rig, outcome }: ReportPage): Html {
  const { sentence, rest } = firstSentence(words.verdict(rig, outcome));
  const likelier = [words.likelierFirst(rig, outcome)].filter((text) => text !== undefined);
  return tag("section", [
    tag(
      "div",
      [first(verdictMark(outcome.verdict), sentence), ...(rest === "" ? [] : [tag("p", rest, { class: "rest" })])],
      {
        class: `sentence ${outcome.verdict}`,
      },
    ),
    ...likelier.map((text) => tag("p", text)),
    tag("p", words.taken(rig, outcome), { class: "taken" }),
  ]);
}
