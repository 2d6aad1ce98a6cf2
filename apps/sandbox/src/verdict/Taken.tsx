import { sayPage } from "@secondline/words/page/page";
import { lazy } from "react";
import { Later } from "../design/Later.tsx";
import { TextButton } from "../design/TextButton.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import styles from "./VerdictColumn.module.css";

const Misfits = lazy(async () => ({ default: (await import("./Misfits.tsx")).Misfits }));

/** Which state of the rig is judged, and the one step to leaving record and tests out or taking them in again. */
export function Taken() {
  const { assessed, choice, speaks, leftOut, issues } = useSandbox((state) => state.assessment);
  const { leaveOut, look } = useActions();
  const what = speaks.record
    ? speaks.tests
      ? sayPage("taken.recordTests")
      : sayPage("taken.record")
    : sayPage("taken.tests");
  return (
    <div className={styles.taken}>
      <p>
        {words.taken(assessed.rig, assessed)}{" "}
        {choice && (
          <TextButton onClick={() => leaveOut(!leftOut)}>
            {leftOut ? sayPage("taken.take", { what }) : sayPage("taken.leaveOut", { what })}
          </TextButton>
        )}
      </p>
      {issues.length > 0 && (
        <div className={styles.unfit} role="alert">
          <p>{sayPage("taken.misfit")}</p>
          <Later what={sayPage("taken.why")}>
            <Misfits issues={issues} />
          </Later>
          <TextButton onClick={() => look({ view: "wear" })}>{sayPage("taken.showWearRecord")}</TextButton>
        </div>
      )}
    </div>
  );
}
