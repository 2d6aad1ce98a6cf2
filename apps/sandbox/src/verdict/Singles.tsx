import type { Outcome, Rig } from "@secondline/scenarios";
import { tableWords } from "@secondline/words/tables";
import { Lines } from "../design/Lines.tsx";
import { VerdictMark } from "../design/VerdictMark.tsx";
import { words } from "../words.ts";
import { sayLater } from "../wordsLater.ts";
import styles from "./Singles.module.css";

/** Every part, one at a time, gone: what then carries the walker. */
export function Singles({ outcome, rig }: { outcome: Outcome; rig: Rig }) {
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">{sayLater("table.single")}</th>
          <th scope="col">{sayLater("table.leaves")}</th>
        </tr>
      </thead>
      <tbody>
        {outcome.singles.map((one) => {
          const { ways, leaves, shown } = words.singleRow(one);
          return (
            <tr key={one.part} data-single={one.single}>
              <th scope="row">
                {words.partName(rig, one.part)} <span className={styles.soft}>{ways}</span>
              </th>
              <td>
                {one.single && <VerdictMark verdict="thin" size={12} />} {leaves}{" "}
                {!one.single && <span className={styles.soft}>{shown}</span>}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** What catches when a part that keeps less than required gives way at its peak. */
export function FollowUps({ outcome, rig }: { outcome: Outcome; rig: Rig }) {
  return <Lines className={styles.follow} of={tableWords.follows(rig, outcome)} />;
}
