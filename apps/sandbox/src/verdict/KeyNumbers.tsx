import { formatForce, formatLength } from "@secondline/rig";
import type { WhatIfOutcome } from "@secondline/scenarios";
import { useSandbox } from "../state/useSandbox.ts";
import styles from "./KeyNumbers.module.css";

interface Row {
  readonly name: string;
  readonly value: (outcome: WhatIfOutcome) => string | undefined;
}
type Signal = keyof NonNullable<WhatIfOutcome["peaks"]>;
/** With the ± of the mesh where it was estimated. */
const force =
  (signal: Signal) =>
  ({ peaks, peakUncertainty }: WhatIfOutcome) => {
    if (!peaks) return undefined;
    return peakUncertainty
      ? `${formatForce(peaks[signal])} ± ${formatForce(peakUncertainty[signal])}`
      : formatForce(peaks[signal]);
  };
const length = (read: (outcome: WhatIfOutcome) => number | undefined) => (outcome: WhatIfOutcome) => {
  const value = read(outcome);
  return value === undefined ? undefined : formatLength(value);
};
const ROWS: readonly Row[] = [
  { name: "Harness", value: force("leash") },
  { name: "Main at A", value: force("mainA") },
  { name: "Main at B", value: force("mainB") },
  { name: "Backup at A", value: force("backupA") },
  { name: "Backup at B", value: force("backupB") },
  { name: "Drop", value: length(({ drop }) => drop) },
];

/** Peaks of the fall in the scene, and of the one before when comparing. */
export function KeyNumbers() {
  const shown = useSandbox((state) => state.run.shown);
  const previous = useSandbox((state) => (state.session.compare ? state.run.previous : undefined));
  if (!shown?.outcome.ok) return null;
  return (
    <section aria-label="Largest values of this fall">
      <h3 className={styles.heading}>This fall</h3>
      <dl className={styles.numbers}>
        {ROWS.map(({ name, value }) => {
          const now = value(shown.outcome);
          if (now === undefined) return null;
          const before = previous && value(previous.outcome);
          return (
            <div key={name} className={styles.row}>
              <dt>{name}</dt>
              <dd>
                {now}
                {before !== undefined && before !== now && <span className={styles.before}>was {before}</span>}
              </dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
}
