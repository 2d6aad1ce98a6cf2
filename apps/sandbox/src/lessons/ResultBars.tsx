import { lessonResultWords, type SliderScale, saidWords, say, type WordKey } from "@secondline/workbench/lessons";
import styles from "./ResultBars.module.css";

interface Props {
  scale: SliderScale;
  /** All in the scale's unit. */
  predicted: number;
  result: number;
  given: number | undefined;
}

/** What was given, what was said and what the run gave, one under the other from the same zero. */
export function ResultBars({ scale, predicted, result, given }: Props) {
  const end = Math.max(predicted, result, given ?? 0, scale.step);
  const bar = (name: WordKey, value: number, look: "given" | "said" | "run") => (
    <div className={styles.row} key={look}>
      <dt className={styles.name}>{say(name)}</dt>
      <dd className={styles.value}>
        <span className={`${styles.bar} ${styles[look]}`} style={{ width: `${(value / end) * 100}%` }} />
        <span className={styles.words}>{(look === "said" ? saidWords : lessonResultWords)(value, scale)}</span>
      </dd>
    </div>
  );
  return (
    <dl className={styles.bars}>
      {given !== undefined && bar("bars.given", given, "given")}
      {bar("bars.said", predicted, "said")}
      {bar("bars.run", result, "run")}
    </dl>
  );
}
