import type { Basis } from "@secondline/scenarios";
import { broughtIn, tellBasis } from "@secondline/words";
import styles from "./BasisNote.module.css";

/** Where a number comes from, in one or two words; the note is in its tooltip and is listed in full beside it. */
export function BasisNote({ basis }: { basis: Basis }) {
  return (
    <span className={styles.basis} title={tellBasis(basis.note)}>
      {broughtIn(basis.kind)}
    </span>
  );
}
