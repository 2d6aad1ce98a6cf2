import { sayPage } from "@secondline/words/page/page";
import { useState } from "react";
import { Lines } from "../design/Lines.tsx";
import { HowWeKnow } from "../evidence/HowWeKnow.tsx";
import styles from "./Cautions.module.css";

interface Props {
  /** Not empty; the first one cannot be closed. */
  cautions: readonly string[];
  /** Across the whole view, or at the foot of a column. */
  across?: boolean;
}

/** Cautions at the foot of a view: the first always in sight, the others over it on request. */
export function CautionFoot({ cautions, across = true }: Props) {
  const [open, setOpen] = useState(false);
  const [first, ...others] = cautions;
  return (
    <section className={across ? styles.across : styles.column} aria-label={sayPage("cautionFoot.cautions")}>
      <p>
        {first}{" "}
        {others.length > 0 && (
          <button type="button" className={styles.more} aria-expanded={open} onClick={() => setOpen(!open)}>
            {open ? sayPage("cautionFoot.fewer") : sayPage("cautionFoot.moreCautions", { count: others.length })}
          </button>
        )}{" "}
        <HowWeKnow className={styles.more} />
      </p>
      <Lines className={styles.others} hidden={!open} of={others} />
    </section>
  );
}
