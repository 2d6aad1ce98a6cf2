import { fieldAt } from "@secondline/rig";
import { useSandbox } from "../state/useSandbox.ts";
import styles from "./Faults.module.css";

/** Every fault of the document in one list, for those whose field is out of sight or does not exist. */
export function Faults() {
  const issues = useSandbox((state) => state.document.issues);
  if (issues.length === 0) return null;
  return (
    <section className={styles.faults} aria-label="To put right">
      <h3 className={styles.heading}>To put right</h3>
      <ul>
        {issues.map((issue) => (
          <li key={`${issue.path} ${issue.message}`}>
            <span className={styles.path}>{fieldAt(issue.path)?.label ?? issue.path}</span> {issue.message}
          </li>
        ))}
      </ul>
      <p className={styles.kept}>Results are those of the last rig without faults.</p>
    </section>
  );
}
