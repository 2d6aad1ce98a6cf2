import type { ClassOutcome, PartVerdict } from "@secondline/scenarios";
import { sayPage } from "@secondline/words/page/page";
import { verdictColour } from "../design/VerdictMark.tsx";
import styles from "./MarginBar.module.css";

/** End of the scale, in multiples of the required factor; longer bars end in an arrow. */
const SCALE_END_RATIO = 3;

/**
 * The margin on a line from 0: solid up to r, hatched on to what it would be on middle values. Ticks where the part gives way
 * (1) and where the user wants it to be. The numbers stand beside it as text.
 */
export function MarginBar({ of, verdict }: { of: ClassOutcome; verdict: PartVerdict }) {
  const end = SCALE_END_RATIO * of.required;
  const share = (margin: number) => `${(Math.min(Math.max(margin, 0), end) / end) * 100}%`;
  return (
    <span
      className={styles.bar}
      aria-hidden="true"
      style={{ "--tone": verdictColour(verdict, "fill") } as React.CSSProperties}
    >
      <span className={styles.central} style={{ width: share(of.strength / of.load) }} />
      <span className={styles.low} style={{ width: share(of.margin) }} />
      <span className={styles.tick} style={{ left: share(1) }} />
      <span className={`${styles.tick} ${styles.required}`} style={{ left: share(of.required) }} />
      {of.margin > end && <span className={styles.beyond}>›</span>}
    </span>
  );
}

/** What the bars and their ticks mean. */
export function MarginKey() {
  return (
    <span>
      {sayPage("marginBar.margin")} <span className={styles.keyTick} /> {sayPage("marginBar.one")}{" "}
      <span className={`${styles.keyTick} ${styles.keyRequired}`} /> {sayPage("marginBar.required")}{" "}
      <span className={styles.keyHatch} /> {sayPage("marginBar.middleValues")}
    </span>
  );
}
