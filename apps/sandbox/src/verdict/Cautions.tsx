import { CAUTIONS } from "@secondline/scenarios";
import { useState } from "react";
import { useSandbox } from "../state/useSandbox.ts";
import styles from "./Cautions.module.css";

/** Stays at the foot of the verdict. The first caution cannot be closed; the others open over it. */
export function Cautions() {
  const [open, setOpen] = useState(false);
  const cautions = useSandbox((state) => state.run.verdict?.outcome.cautions) ?? CAUTIONS;
  const [first, ...others] = cautions;
  return (
    <section className={styles.cautions} aria-label="Cautions">
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
