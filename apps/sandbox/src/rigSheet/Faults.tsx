import { broughtIn } from "@secondline/words";
import { spokenGroup } from "@secondline/words/fields";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
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
          <li key={`${issue.path} ${issue.message}`}>
            {whereIs(issue.path) && <span className={styles.path}>{whereIs(issue.path)}: </span>}
            {broughtIn(issue.message)}
          </li>
        ))}
      </ul>
      <p className={styles.kept}>{sayRigSheet("faults.stale")}</p>
    </section>
  );
}

/** The group a field is in, with its number in a list; the message itself names the field. */
function whereIs(path: string): string | undefined {
  const group = path.replace(/\.?[^.[\]]+$/, "");
  const item = /\[(\d+)\]$/.exec(group);
  const name = spokenGroup(item ? group.slice(0, item.index) : group);
  if (group === "" || name === undefined) return undefined;
  return item ? `${name} ${Number(item[1]) + 1}` : name;
}
