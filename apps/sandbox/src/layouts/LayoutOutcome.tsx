import { Button } from "../design/Button.tsx";
import { Meter } from "../design/Meter.tsx";
import { VerdictMark } from "../design/VerdictMark.tsx";
import { answerWords } from "../question/answerWords.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./LayoutColumn.module.css";

/** What came of the what-if, or how far its computation is. */
export function LayoutFall() {
  const { fall, shown } = useSandbox((state) => state.run);
  const faults = useSandbox((state) => state.document.issues);
  const { stop, runNow } = useActions();
  const busy = fall.kind === "busy" || fall.kind === "waiting";
  return (
    <div className={styles.fall}>
      {faults.length > 0 && (
        <p className={styles.note} role="alert">
          {faults[0]!.message} What you see is the layout before that.
        </p>
      )}
      {busy && (
        <div className={styles.busy}>
          <Meter done={fall.kind === "busy" ? fall.progress.done : 0} doing="Computing the fall" />
          <Button icon="stop" iconOnly label="Stop" onClick={stop} />
        </div>
      )}
      {(fall.kind === "stopped" || fall.kind === "failed") && (
        <p className={styles.note} role={fall.kind === "failed" ? "alert" : undefined}>
          {fall.kind === "failed" ? `Not computed: ${fall.message}` : "Stopped."}{" "}
          <button type="button" className={styles.link} onClick={runNow}>
            Run
          </button>
        </p>
      )}
      {!busy && fall.kind === "idle" && shown && (
        <p className={styles.answer}>{answerWords(shown.outcome, shown.rig)}</p>
      )}
    </div>
  );
}

const WORDS = { holds: "Holds", thin: "Thin", fails: "Fails" } as const;

/** The verdict over all what-ifs, or how far it is. */
export function LayoutVerdict() {
  const verdict = useSandbox((state) => state.run.verdict);
  const stale = useSandbox((state) => state.run.verdict?.rigVersion !== state.document.rigVersion);
  const study = useSandbox((state) => state.run.study);
  const { stop, runNow } = useActions();
  return (
    <div className={styles.verdict}>
      {verdict && (
        <>
          <p className={styles.word} style={{ color: `var(--${verdict.outcome.verdict}-ink)` }}>
            <VerdictMark verdict={verdict.outcome.verdict} size={18} />
            {WORDS[verdict.outcome.verdict]}
            {stale && <span className={styles.stale}>before the last change</span>}
          </p>
          <p className={styles.sentence}>{withoutWord(verdict.outcome.sentence, WORDS[verdict.outcome.verdict])}</p>
        </>
      )}
      {study.kind === "busy" && (
        <div className={styles.busy}>
          <Meter done={study.progress.done} doing="Computing the what-ifs" />
          <Button icon="stop" iconOnly label="Stop the study" onClick={stop} />
        </div>
      )}
      {(study.kind === "failed" || study.kind === "stopped") && (
        <p className={styles.note}>
          {study.kind === "failed" ? `No verdict: ${study.message}` : "The verdict was not computed to its end."}{" "}
          <button type="button" className={styles.link} onClick={runNow}>
            Compute it
          </button>
        </p>
      )}
    </div>
  );
}

/** The sentence opens with the verdict's word, which already stands above it. */
function withoutWord(sentence: string, word: string): string {
  if (!sentence.startsWith(`${word}: `)) return sentence;
  const rest = sentence.slice(word.length + 2);
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}
