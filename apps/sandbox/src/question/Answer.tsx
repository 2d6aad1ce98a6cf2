import type { RunSlice } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Meter } from "../design/Meter.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import styles from "./Answer.module.css";

const MESHES = [
  { value: "quick", label: "Coarse mesh" },
  { value: "standard", label: "Standard mesh, and a finer" },
  { value: "fine", label: "Fine mesh, and a coarser" },
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
      <Choice compact label="Mesh" value={accuracy} options={MESHES} onChange={chooseAccuracy} />
      {busy ? (
        <Button icon="stop" label="Stop" onClick={stop} />
      ) : (
        <Button
          label={fall.kind === "done" ? "Run again" : "Run"}
          tone={fall.kind === "done" ? "plain" : "filled"}
          onClick={runNow}
        />
      )}
    </div>
  );
}

function doing(fall: RunSlice["fall"]): string {
  return fall.kind === "busy" ? "Computing the fall" : "Waiting for the change to settle";
}

/** What came in the way of the fall. `below`: whether a run before it is still to be seen. */
function Trouble({ fall, below }: { fall: RunSlice["fall"]; below: boolean }) {
  const rest = below ? " What you see below belongs to the run before." : "";
  if (fall.kind === "stopped") return <p className={styles.sentence}>Stopped.{rest}</p>;
  if (fall.kind === "failed") {
    return (
      <p className={styles.sentence} role="alert">
        The fall was not computed: {fall.message.replace(/\.?$/, ".")}
        {rest}
      </p>
    );
  }
  return null;
}
