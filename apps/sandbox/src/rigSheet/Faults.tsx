import { tellFault } from "@secondline/words/faults";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { groupOfField } from "@secondline/workbench";
import { useSandbox } from "../state/useSandbox.ts";
import styles from "./Faults.module.css";

/** Every fault of the document in one list, for those whose field is out of sight or does not exist. */
export function Faults() {
  const issues = useSandbox((state) => state.document.issues);
  if (issues.length === 0) return null;
  return (
    <section className={styles.faults} aria-label={sayRigSheet("faults.putRight")}>
      <h3 className={styles.heading}>{sayRigSheet("faults.putRight")}</h3>
      <ul>
        {issues.map((issue) => (
          <li key={`${issue.path} ${issue.message.code}`}>
            {groupOfField(issue.path) && <span className={styles.path}>{groupOfField(issue.path)}: </span>}
            {tellFault(issue.message)}
          </li>
        ))}
      </ul>
      <p className={styles.kept}>{sayRigSheet("faults.stale")}</p>
    </section>
  );
}
