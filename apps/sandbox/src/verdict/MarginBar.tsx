import type { PartOutcome } from "@secondline/scenarios";
import styles from "./MarginBar.module.css";

/** End of the scale, in multiples of the required factor; longer bars end in an arrow. */
const SCALE = 3;

/**
 * Strength over load on a line from 0: solid up to the 5 % value, hatched up to the central one. Ticks where the part
 * parts (1) and where the user wants it to be. The numbers stand beside it as text.
 */
export function MarginBar({ part, required }: { part: PartOutcome; required: number }) {
  const end = SCALE * required;
  const share = (margin: number) => `${(Math.min(Math.max(margin, 0), end) / end) * 100}%`;
  return (
    <span
      className={styles.bar}
      aria-hidden="true"
      style={{ "--tone": `var(--${part.verdict})` } as React.CSSProperties}
    >
      <span className={styles.central} style={{ width: share(part.margin) }} />
      <span className={styles.low} style={{ width: share(part.margin5) }} />
      <span className={styles.tick} style={{ left: share(1) }} />
      <span className={`${styles.tick} ${styles.required}`} style={{ left: share(required) }} />
      {part.margin5 > end && <span className={styles.beyond}>›</span>}
    </span>
  );
}

/** What the bars and their ticks mean. */
export function MarginKey({ required }: { required: number }) {
  return (
    <p className={styles.key}>
      Strength ÷ load: <span className={styles.keyTick} /> parts at 1{" "}
      <span className={`${styles.keyTick} ${styles.keyRequired}`} /> required {required}{" "}
      <span className={styles.keyHatch} /> 5 % to middle
    </p>
  );
}
