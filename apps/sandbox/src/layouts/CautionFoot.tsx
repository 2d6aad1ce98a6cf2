import { useState } from "react";
import styles from "./CautionFoot.module.css";

interface Props {
  /** Not empty; the first one cannot be closed. */
  cautions: readonly string[];
}

/** Cautions at the foot of a view: the first always in sight, the others over it on request. */
export function CautionFoot({ cautions }: Props) {
  const [open, setOpen] = useState(false);
  const [first, ...others] = cautions;
  return (
    <section className={styles.foot} aria-label="Cautions">
      <p>
        {first}{" "}
        {others.length > 0 && (
          <button type="button" className={styles.more} aria-expanded={open} onClick={() => setOpen(!open)}>
            {open ? "Fewer" : `${others.length} more cautions`}
          </button>
        )}
      </p>
      {open && (
        <ul className={styles.others}>
          {others.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
