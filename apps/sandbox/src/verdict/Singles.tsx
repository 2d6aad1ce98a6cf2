import type { Outcome, Rig } from "@secondline/scenarios";
import { VerdictMark } from "../design/VerdictMark.tsx";
import { words } from "../words.ts";
import styles from "./Singles.module.css";

/** Every part, one at a time, gone: what then carries the walker. */
export function Singles({ outcome, rig }: { outcome: Outcome; rig: Rig }) {
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">Gone</th>
          <th scope="col">Then the walker is carried by</th>
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
  return (
    <ul className={styles.follow}>
      {outcome.followUps.map(({ part, during, caughtBy, whatIf }) => (
        <li key={`${part} ${during}`}>
          <b>{words.partName(rig, part)}</b>{" "}
          <span className={styles.soft}>{words.eventTitle(rig, outcome.whatIfs[during]!.whatIf)}</span>
          <br />
          {caughtBy === "nothing"
            ? words.say("verdict.nothingThen")
            : words.say("verdict.catcherThen", { catcher: words.say(`catcher.${caughtBy}`) })}
          {whatIf === undefined && <span className={styles.soft}> {words.say("single.notShown")}</span>}
        </li>
      ))}
    </ul>
  );
}
