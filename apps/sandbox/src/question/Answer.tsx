import { sayPage } from "@secondline/words/page/page";
import { fallTrouble } from "@secondline/workbench";
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
  const trouble = fallTrouble(fall, shown !== undefined);
  const busy = fall.kind === "busy" || fall.kind === "waiting";
  return (
    <div className={styles.answer}>
      <div className={styles.words} data-testid="answer">
        {fall.kind === "busy" && <Meter done={fall.progress.done} doing={sayPage("answer.computing")} />}
        {fall.kind === "waiting" && <Meter done={0} doing={sayPage("answer.waiting")} />}
        {trouble && (
          <p className={styles.sentence} role={trouble.isAlert ? "alert" : undefined}>
            {trouble.text}
          </p>
        )}
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
