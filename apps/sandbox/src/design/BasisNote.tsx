import type { Basis } from "@secondline/scenarios";
import { broughtIn } from "@secondline/words";
import styles from "./BasisNote.module.css";

/** Where a number comes from, in one or two words; the note is in its tooltip and is listed in full beside it. */
export function BasisNote({ basis }: { basis: Basis }) {
  return (
    <span className={styles.basis} title={broughtIn(basis.note)}>
      {broughtIn(basis.kind)}
    </span>
  );
}
