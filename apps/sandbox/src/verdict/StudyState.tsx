import { sayPage } from "@secondline/words/page/page";
import { studyNotice, studyTold } from "@secondline/workbench";
import { useShallow } from "zustand/react/shallow";
import { Button } from "../design/Button.tsx";
import { Meter } from "../design/Meter.tsx";
import { TextButton } from "../design/TextButton.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./VerdictColumn.module.css";

/** How far the search for the verdict is, what came in its way, and how to go on. */
export function StudyState() {
  const { kind } = useSandbox((state) => state.run.study);
  const notice = useSandbox(useShallow(studyNotice));
  const faults = useSandbox((state) => state.document.issues.length);
  const { stop, look, ...steps } = useActions();
  return (
    <>
      {faults > 0 && (
        <p className={styles.note}>
          {sayPage("studyState.faultsFirst", { faults })}{" "}
          <TextButton onClick={() => look({ rigOpen: true, place: "rig" })}>{sayPage("studyState.show")}</TextButton>
        </p>
      )}
      {(kind === "busy" || kind === "waiting") && (
        <div className={styles.busy} data-search>
          <Search />
          <Button icon="stop" iconOnly label={sayPage("studyState.stopSearch")} onClick={stop} />
        </div>
      )}
      {notice && (
        <p className={styles.note} role={notice.isAlert ? "alert" : undefined}>
          {notice.text} <TextButton onClick={() => void steps[notice.does]()}>{notice.step}</TextButton>
        </p>
      )}
    </>
  );
}

function Search() {
  const run = useSandbox((state) => state.run);
  return <Meter {...studyTold(run)} />;
}
