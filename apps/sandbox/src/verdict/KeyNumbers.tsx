import { sayVerdict } from "@secondline/words/page/verdict";
import { fallNumbers } from "@secondline/workbench";
import { useSandbox } from "../state/useSandbox.ts";
import styles from "./KeyNumbers.module.css";

/** Peaks of the fall in the scene, and of the one before when comparing. */
export function KeyNumbers() {
  const shown = useSandbox((state) => state.run.shown);
  const previous = useSandbox((state) => (state.session.compare ? state.run.previous : undefined));
  const isNow = useSandbox((state) => state.run.shown?.key === state.assessment.key);
  if (!shown?.outcome.ok || !isNow) return null;
  return (
    <section aria-label={sayVerdict("keyNumbers.largestValuesFall")}>
      <h3 className={styles.heading}>{sayVerdict("keyNumbers.fall")}</h3>
      <dl className={styles.numbers}>
        {fallNumbers(shown, previous).map(({ name, now, beside, before }) => (
          <div key={name} className={styles.row}>
            <dt>{name}</dt>
            <dd>
              {now}
              {beside !== undefined && <span className={styles.before}>{beside}</span>}
              {before !== undefined && (
                <span className={styles.before}>{sayVerdict("keyNumbers.was", { before })}</span>
              )}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
