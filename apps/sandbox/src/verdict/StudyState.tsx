import { sayPage } from "@secondline/words/page/page";
import { foundOf, mayTurn, settledWords, shortReason, stoppedWords, studyTold } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Meter } from "../design/Meter.tsx";
import { TextButton } from "../design/TextButton.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./VerdictColumn.module.css";

/** How far the search for the verdict is, what came in its way, and how to go on. */
export function StudyState() {
  const study = useSandbox((state) => state.run.study);
  const soFar = useSandbox((state) => state.run.verdict.soFar);
  const faults = useSandbox((state) => state.document.issues.length);
  const { stop, lookOn, look } = useActions();
  return (
    <>
      {faults > 0 && (
        <p className={styles.note}>
          {sayPage("studyState.faultsFirst", { faults })}{" "}
          <TextButton onClick={() => look({ rigOpen: true, place: "rig" })}>{sayPage("studyState.show")}</TextButton>
        </p>
      )}
      {(study.kind === "busy" || study.kind === "waiting") && (
        <div className={styles.busy} data-search>
          <Search />
          <Button icon="stop" iconOnly label={sayPage("studyState.stopSearch")} onClick={stop} />
        </div>
      )}
      {study.kind === "stopped" && (
        <p className={styles.note}>
          {sayPage("studyState.stopped")} {stoppedWords(soFar)}{" "}
          <TextButton onClick={() => void lookOn()}>{sayPage("studyState.lookOn")}</TextButton>
        </p>
      )}
      {(study.kind === "idle" || study.kind === "done") && <Longer />}
      {study.kind === "failed" && (
        <p className={styles.note} role="alert">
          {sayPage("studyState.notComputed", { message: shortReason(study.message) })}{" "}
          <TextButton onClick={() => void lookOn()}>{sayPage("studyState.tryAgain")}</TextButton>
        </p>
      )}
    </>
  );
}

/** What lies near a limit is settled by more runs. */
function Longer() {
  const outcome = useSandbox((state) => foundOf(state)?.outcome);
  const { lookLonger } = useActions();
  if (!outcome || !mayTurn(outcome)) return null;
  return (
    <p className={styles.note}>
      {settledWords(outcome)}{" "}
      <TextButton onClick={() => void lookLonger()}>{sayPage("studyState.lookLonger")}</TextButton>
    </p>
  );
}

function Search() {
  const run = useSandbox((state) => state.run);
  return <Meter {...studyTold(run)} />;
}
