import styles from "./Meter.module.css";

/** How far something has come, 0 to 1, with what it is doing. */
export function Meter({ done, doing }: { done: number; doing: string }) {
  const percent = Math.round(Math.min(Math.max(done, 0), 1) * 100);
  return (
    <div className={styles.meter}>
      <div
        className={styles.track}
        role="progressbar"
        aria-label={doing}
        aria-valuenow={percent}
        aria-valuemin={0}
        aria-valuemax={100}
      >
        <div className={styles.filled} style={{ width: `${percent}%` }} />
      </div>
      <span className={styles.doing}>
        {doing} · {percent} %
      </span>
    </div>
  );
}
