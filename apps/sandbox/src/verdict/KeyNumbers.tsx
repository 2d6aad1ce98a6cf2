import type { WhatIfOutcome } from "@secondline/scenarios";
import { sayVerdict } from "@secondline/words/page/verdict";
import type { ShownRun } from "@secondline/workbench";
import { useSandbox } from "../state/useSandbox.ts";
import { quantity } from "../words.ts";
import styles from "./KeyNumbers.module.css";

interface Row {
  readonly name: string;
  readonly value: (run: ShownRun) => string | undefined;
  /** The same on the other mesh, where it was asked for. */
  readonly other?: (run: ShownRun) => string | undefined;
}
type Signal = keyof NonNullable<WhatIfOutcome["peaks"]>;
const force = (name: string, signal: Signal): Row => ({
  name,
  value: ({ outcome }) => outcome.peaks && quantity.load(outcome.peaks[signal]),
  other: ({ otherMesh }) =>
    otherMesh && sayVerdict(`keyNumbers.mesh.${otherMesh.accuracy}`, { load: quantity.load(otherMesh.peaks[signal]) }),
});
const ROWS: readonly Row[] = [
  force(sayVerdict("keyNumbers.harness"), "leash"),
  force(sayVerdict("keyNumbers.mainA"), "mainA"),
  force(sayVerdict("keyNumbers.mainB"), "mainB"),
  force(sayVerdict("keyNumbers.backupA"), "backupA"),
  force(sayVerdict("keyNumbers.backupB"), "backupB"),
  {
    name: sayVerdict("keyNumbers.drop"),
    value: ({ outcome: { drop } }) => (drop === undefined ? undefined : quantity.drop(drop)),
  },
];

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
        {ROWS.map(({ name, value, other }) => {
          const now = value(shown);
          if (now === undefined) return null;
          const before = previous && value(previous);
          const beside = other?.(shown);
          return (
            <div key={name} className={styles.row}>
              <dt>{name}</dt>
              <dd>
                {now}
                {beside !== undefined && <span className={styles.before}>{beside}</span>}
                {before !== undefined && before !== now && (
                  <span className={styles.before}>{sayVerdict("keyNumbers.was", { before })}</span>
                )}
              </dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
}
