import { type Outcome, type WhatIfOutcome, whatIfKey } from "@secondline/scenarios";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { quantity, words } from "../words.ts";
import styles from "./WhatIfList.module.css";

/** Every what-if of the verdict with its key numbers; choosing one shows it in the scene. */
export function WhatIfList({ outcome }: { outcome: Outcome }) {
  const { chooseWhatIf } = useActions();
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const chosen = useSandbox((state) => whatIfKey(state.session.whatIf));
  return (
    <ul className={styles.list}>
      {outcome.whatIfs.map((entry) => (
        <li key={entry.key}>
          <button
            type="button"
            className={styles.entry}
            aria-pressed={entry.key === chosen}
            onClick={() => chooseWhatIf(entry.whatIf)}
          >
            <span className={styles.title}>{words.whatIfRow(rig, entry).title}</span>
            <span className={styles.numbers}>
              {entry.ok ? [words.fate(rig, entry), ...numbers(entry)].join(" · ") : words.trouble(rig, entry.trouble)}
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function numbers({ drop, peaks, feetClearance, lostBecause }: WhatIfOutcome): readonly string[] {
  return [
    ...(drop === undefined || lostBecause ? [] : [`${quantity.drop(drop)} down`]),
    ...(peaks ? [`harness ${quantity.load(peaks.leash)}`] : []),
    ...(feetClearance === undefined || feetClearance <= 0 ? [] : [`${quantity.height(feetClearance)} under the feet`]),
  ];
}
