import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import styles from "./VerdictColumn.module.css";

/** Which state of the rig is judged, and the one step to leaving record and tests out or taking them in again. */
export function Taken() {
  const { assessed, choice, speaks, leftOut, issues } = useSandbox((state) => state.assessment);
  const { leaveOut, look } = useActions();
  const what = speaks.record ? (speaks.tests ? "record and tests" : "the record") : "the tests";
  return (
    <div className={styles.taken}>
      <p>
        {words.taken(assessed.rig, assessed)}{" "}
        {choice && (
          <button type="button" className={styles.link} onClick={() => leaveOut(!leftOut)}>
            {leftOut ? `Take ${what} in` : `Leave ${what} out`}
          </button>
        )}
      </p>
      {issues.length > 0 && (
        <div className={styles.unfit} role="alert">
          <p>What is known does not fit together, so there is no verdict:</p>
          <ul>
            {issues.map(({ path, message }) => (
              <li key={`${path} ${message}`}>{message}</li>
            ))}
          </ul>
          <button type="button" className={styles.link} onClick={() => look({ view: "wear" })}>
            Show the wear record
          </button>
        </div>
      )}
    </div>
  );
}
