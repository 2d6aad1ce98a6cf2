import { formatForce, formatLength } from "@secondline/rig";
import type { Outcome, WhatIfOutcome } from "@secondline/scenarios";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./WhatIfList.module.css";

/** Every what-if of the verdict with its key numbers; choosing one shows it in the scene. */
export function WhatIfList({ outcome }: { outcome: Outcome }) {
  const { chooseWhatIf } = useActions();
  const chosen = JSON.stringify(useSandbox((state) => state.session.whatIf));
  return (
    <ul className={styles.list}>
      {outcome.whatIfs.map((entry) => (
        <li key={JSON.stringify(entry.whatIf)}>
          <button
            type="button"
            className={styles.entry}
            aria-pressed={JSON.stringify(entry.whatIf) === chosen}
            onClick={() => chooseWhatIf(entry.whatIf)}
          >
            <span className={styles.title}>{entry.title}</span>
            <span className={styles.numbers}>{numbers(entry)}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function numbers(entry: WhatIfOutcome): string {
  if (!entry.ok) return "not computed reliably";
  const facts = [
    entry.caught ? "caught" : "not caught",
    entry.drop === undefined ? "" : `${formatLength(entry.drop)} down`,
    entry.peaks ? `harness ${formatForce(entry.peaks.leash)}` : "",
    ground(entry.feetClearance),
  ];
  return facts.filter((fact) => fact !== "").join(" · ");
}

function ground(left: number | undefined): string {
  if (left === undefined) return "";
  return left > 0 ? `${formatLength(left)} under the feet` : "reaches the ground";
}
