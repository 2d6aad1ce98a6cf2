import { tellFault } from "@secondline/words/faults";
import { sayLayouts } from "@secondline/words/page/layouts";
import { fallTrouble, foundOf, outcomeOf } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Meter } from "../design/Meter.tsx";
import { TextButton } from "../design/TextButton.tsx";
import { VerdictMark, verdictColour } from "../design/VerdictMark.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { StudyState } from "../verdict/StudyState.tsx";
import { VerdictSentence } from "../verdict/VerdictHead.tsx";
import { words } from "../words.ts";
import styles from "./LayoutColumn.module.css";

/** What came of the what-if, or how far its computation is. */
export function LayoutFall() {
  const { fall, shown } = useSandbox((state) => state.run);
  const isNow = useSandbox((state) => state.run.shown?.key === state.assessment.key);
  const faults = useSandbox((state) => state.document.issues);
  const { stop, runNow } = useActions();
  const busy = fall.kind === "busy" || fall.kind === "waiting";
  const trouble = fallTrouble(fall, false);
  return (
    <div className={styles.fall}>
      {faults.length > 0 && (
        <p className={styles.note} role="alert">
          {sayLayouts("layoutOutcome.stale", { message: tellFault(faults[0]!.message) })}
        </p>
      )}
      {busy && (
        <div className={styles.busy}>
          <Meter
            done={fall.kind === "busy" ? fall.progress.done : 0}
            doing={sayLayouts("layoutOutcome.computingFall")}
          />
          <Button icon="stop" iconOnly label={sayLayouts("layoutOutcome.stop")} onClick={stop} />
        </div>
      )}
      {trouble && (
        <p className={styles.note} role={trouble.isAlert ? "alert" : undefined}>
          {trouble.text} <TextButton onClick={runNow}>{sayLayouts("layoutOutcome.run")}</TextButton>
        </p>
      )}
      {fall.kind === "done" && shown && isNow && (
        <p className={styles.answer}>{words.story(shown.assessed.rig, shown.outcome).join(" ")}</p>
      )}
    </div>
  );
}

/** The verdict over all what-ifs and what it is of, or how far it is. */
export function LayoutVerdict() {
  const outcome = useSandbox(outcomeOf);
  const isWhole = useSandbox((state) => foundOf(state) !== undefined);
  const assessed = useSandbox((state) => state.assessment.assessed);
  const word = outcome && words.verdictWord(outcome);
  return (
    <div className={styles.verdict}>
      <p className={styles.word} style={{ color: verdictColour(outcome?.verdict ?? "open") }}>
        <VerdictMark verdict={outcome?.verdict ?? "open"} size={18} />
        {word ?? sayLayouts("layoutOutcome.noVerdictYet")}
        {outcome && !isWhole && outcome.verdict !== "open" && (
          <span className={styles.part}>{sayLayouts("layoutOutcome.soFar")}</span>
        )}
      </p>
      {outcome && <VerdictSentence rig={assessed.rig} outcome={outcome} className={styles.sentence} />}
      <StudyState />
      <p className={styles.note}>{words.taken(assessed.rig, assessed)}</p>
    </div>
  );
}
