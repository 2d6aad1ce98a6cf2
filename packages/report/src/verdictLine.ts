/** The verdict, what has no second, and what was taken into account. */
import type { PartOutcome } from "@secondline/scenarios";
import { type Html, raw, tag } from "./html.ts";
import type { Page } from "./page.ts";

const MARK: Readonly<Record<PartOutcome["verdict"], string>> = {
  holds: "●",
  thin: "▲",
  fails: "✕",
  open: "○",
  notLoaded: "–",
};

/** The verdict's shape; the word stands beside it. */
export const verdictMark = (verdict: PartOutcome["verdict"], word?: string): Html =>
  tag("span", word === undefined ? MARK[verdict] : `${MARK[verdict]} ${word}`, { class: `verdict ${verdict}` });

export function verdictLine({ words, rig, outcome }: Page): Html {
  const likelier = [words.likelierFirst(rig, outcome)].filter((text) => text !== undefined);
  return tag("section", [
    tag("p", [verdictMark(outcome.verdict), raw(" &nbsp;"), words.verdict(rig, outcome)], {
      class: `sentence ${outcome.verdict}`,
    }),
    ...likelier.map((text) => tag("p", text)),
    tag("p", words.taken(rig, outcome), { class: "taken" }),
  ]);
}
