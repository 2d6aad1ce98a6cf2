import { type LessonJob, say } from "@secondline/workbench/lessons";
import { Button } from "../design/Button.tsx";
import { Meter } from "../design/Meter.tsx";
import styles from "./LessonPage.module.css";

interface WorkProps {
  work: LessonJob;
  doing: string;
  stop: () => void;
  retry: () => unknown;
}

/** How far a run is, or why there is none, with what can be done about it. */
export function WorkState({ work, doing, stop, retry }: WorkProps) {
  if (work.kind === "busy") {
    return (
      <div className={styles.busy}>
        <Meter done={work.progress.done} doing={doing} />
        <Button icon="stop" label={say("lesson.stop")} onClick={stop} />
      </div>
    );
  }
  if (work.kind !== "stopped" && work.kind !== "failed") return null;
  return (
    <div className={styles.busy} role={work.kind === "failed" ? "alert" : undefined}>
      <p>{work.kind === "failed" ? say("lesson.failed", { message: work.message }) : say("lesson.stopped")}</p>
      <Button label={say("lesson.retry")} onClick={() => void retry()} />
    </div>
  );
}
