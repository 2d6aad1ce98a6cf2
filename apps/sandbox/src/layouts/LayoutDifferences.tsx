import { useMemo } from "react";
import { useStore } from "zustand";
import { useSandbox } from "../state/useSandbox.ts";
import styles from "./LayoutColumn.module.css";
import { layoutChanges } from "./layoutChanges.ts";
import type { Layout } from "./layouts.ts";
import { fallDifferences, verdictDifferences } from "./whatItDid.ts";

interface Props {
  place: number;
  first: Layout;
}

/** More than these changes are another rig rather than a change. */
export const MOST_CHANGES = 6;

/** What the layout around it does differently from the first one. */
export function useChanges(first: Layout) {
  const document = useSandbox((state) => state.document.goodDocument);
  const base = useStore(first.sandbox.store, (state) => state.document.goodDocument);
  return useMemo(() => layoutChanges(base, document), [base, document]);
}

/** What was changed against the first layout, and what that did. */
export function LayoutDifferences({ place, first }: Props) {
  const changes = useChanges(first);
  const { shown, verdict } = useSandbox((state) => state.run);
  const baseRun = useStore(first.sandbox.store, (state) => state.run);
  if (place === 0) return <div className={styles.differences}>The others are held against this one.</div>;
  const ready = shown && baseRun.shown && shown.whatIf === baseRun.shown.whatIf;
  const said = [
    ...(ready ? fallDifferences(baseRun.shown!.outcome, shown.outcome) : []),
    ...(verdict && baseRun.verdict ? verdictDifferences(baseRun.verdict.outcome, verdict.outcome) : []),
  ];
  return (
    <div className={styles.differences}>
      <h4 className={styles.heading}>What was changed</h4>
      {changes.length === 0 ? (
        <p>Nothing yet: it is the same as A.</p>
      ) : (
        <ul className={styles.changes}>
          {changes.slice(0, MOST_CHANGES).map(({ path, label, before, after }) => (
            <li key={path}>
              {label}: <s>{before}</s> <b>{after}</b>
            </li>
          ))}
          {changes.length > MOST_CHANGES && (
            <li>and {changes.length - MOST_CHANGES} more entries: it is another rig.</li>
          )}
        </ul>
      )}
      {changes.length > 0 && said.length > 0 && (
        <>
          <h4 className={styles.heading}>What it did</h4>
          <ul className={styles.did}>
            {said.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
