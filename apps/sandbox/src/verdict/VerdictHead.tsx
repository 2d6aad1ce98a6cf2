import type { Outcome, Rig } from "@secondline/scenarios";
import { sayPage } from "@secondline/words/page/page";
import { foundOf, sentenceBelowWord } from "@secondline/workbench";
import type { ReactNode } from "react";
import { VerdictMark, verdictColour } from "../design/VerdictMark.tsx";
import { useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import { StudyState } from "./StudyState.tsx";
import { Taken } from "./Taken.tsx";
import styles from "./VerdictColumn.module.css";

/** The verdict in a word and a sentence, what it is of, and what has no second. `children` stand below the sentence. */
export function VerdictHead({ outcome, children }: { outcome: Outcome | undefined; children: ReactNode }) {
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const isWhole = useSandbox((state) => foundOf(state) !== undefined);
  if (!outcome) {
    return (
      <>
        <header>
          <h2 className={styles.word} style={{ color: verdictColour("open") }}>
            <VerdictMark verdict="open" size={22} />
            {sayPage("verdictHead.noVerdictYet")}
          </h2>
          <StudyState />
          <Taken />
        </header>
        {children}
      </>
    );
  }
  const word = words.verdictWord(outcome);
  const likelier = words.likelierFirst(rig, outcome);
  return (
    <>
      <header data-verdict={outcome.verdict} data-whole={isWhole}>
        <h2 className={styles.word} style={{ color: verdictColour(outcome.verdict) }}>
          <VerdictMark verdict={outcome.verdict} size={22} />
          {word}
          {!isWhole && outcome.verdict !== "open" && (
            <span className={styles.part}>{sayPage("verdictHead.soFar")}</span>
          )}
        </h2>
        <VerdictSentence {...{ rig, outcome }} className={styles.sentence} />
        <StudyState />
        <Taken />
      </header>
      {children}
      <div className={styles.facts}>
        {outcome.invented && <p className={styles.note}>{words.say("caution.invented")}</p>}
        <p>{words.singles(rig, outcome)}</p>
        {isWhole && likelier && <p>{likelier}</p>}
      </div>
    </>
  );
}

interface SentenceProps {
  rig: Rig;
  outcome: Outcome;
  className: string | undefined;
}

/** The verdict's sentence, without its word; while nothing is found yet, how far the search has come stands at its meter. */
export function VerdictSentence({ rig, outcome, className }: SentenceProps) {
  const isLooking = useSandbox(({ run }) => run.study.kind === "busy" || run.study.kind === "waiting");
  if (isLooking && outcome.verdict === "open") return null;
  return <p className={className}>{sentenceBelowWord(rig, outcome)}</p>;
}
