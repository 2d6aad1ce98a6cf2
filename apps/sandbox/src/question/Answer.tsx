import { sayPage } from "@secondline/words/page/page";
import type { RunSlice } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Meter } from "../design/Meter.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import styles from "./Answer.module.css";

const MESHES = [
  { value: "quick", label: sayPage("answer.coarseMesh") },
  { value: "standard", label: sayPage("answer.standardMeshFiner") },
  { value: "fine", label: sayPage("answer.fineMeshCoarser") },
] as const;

/** Under the question: what it came to, or how far the computation is, with the button to stop or run it. */
export function Answer() {
  const fall = useSandbox((state) => state.run.fall);
  const shown = useSandbox((state) => state.run.shown);
  const isNow = useSandbox((state) => state.run.shown?.key === state.assessment.key);
  const accuracy = useSandbox((state) => state.session.accuracy);
  const { runNow, stop, chooseAccuracy } = useActions();
  const busy = fall.kind === "busy" || fall.kind === "waiting";
  return (
    <div className={styles.answer}>
      <div className={styles.words} data-testid="answer">
        {busy && <Meter done={fall.kind === "busy" ? fall.progress.done : 0} doing={doing(fall)} />}
        {!busy && <Trouble fall={fall} below={shown !== undefined} />}
        {fall.kind === "done" && shown && isNow && (
          <p className={styles.sentence}>{words.story(shown.assessed.rig, shown.outcome).join(" ")}</p>
        )}
      </div>
      <Choice compact label={sayPage("answer.mesh")} value={accuracy} options={MESHES} onChange={chooseAccuracy} />
      {busy ? (
        <Button icon="stop" label={sayPage("answer.stop")} onClick={stop} />
      ) : (
        <Button
          label={fall.kind === "done" ? sayPage("answer.runAgain") : sayPage("answer.run")}
          tone={fall.kind === "done" ? "plain" : "filled"}
          onClick={runNow}
        />
      )}
    </div>
  );
}

function doing(fall: RunSlice["fall"]): string {
  return fall.kind === "busy" ? sayPage("answer.computing") : sayPage("answer.waiting");
}

/** What came in the way of the fall. `below`: whether a run before it is still to be seen. */
function Trouble({ fall, below }: { fall: RunSlice["fall"]; below: boolean }) {
  if (fall.kind === "stopped")
    return <p className={styles.sentence}>{sayPage(below ? "answer.stoppedBelow" : "answer.stopped")}</p>;
  if (fall.kind === "failed") {
    return (
      <p className={styles.sentence} role="alert">
        {sayPage(below ? "answer.notComputedBelow" : "answer.notComputed", {
          message: fall.message.replace(/\.?$/, "."),
        })}
      </p>
    );
  }
  return null;
}
