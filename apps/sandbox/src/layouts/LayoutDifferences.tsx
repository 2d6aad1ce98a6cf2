import { sayLayouts } from "@secondline/words/page/layouts";
import {
  differencesTold,
  foundOf,
  type Layout,
  type LayoutChange,
  LETTERS,
  layoutChanges,
  MOST_CHANGES,
} from "@secondline/workbench";
import { useMemo } from "react";
import { useStore } from "zustand";
import { useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import styles from "./LayoutColumn.module.css";

interface Props {
  place: number;
  first: Layout;
}

/** What the layout around it does differently from the first one. */
export function useChanges(first: Layout): readonly LayoutChange[] {
  const document = useSandbox((state) => state.document.goodDocument);
  const base = useStore(first.sandbox.store, (state) => state.document.goodDocument);
  return useMemo(() => layoutChanges(base, document), [base, document]);
}

/** What was changed against the first layout, and what that did: once both have their whole verdict. */
export function LayoutDifferences({ place, first }: Props) {
  const changes = useChanges(first);
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const outcome = useSandbox((state) => foundOf(state)?.outcome);
  const base = useStore(first.sandbox.store, (state) => foundOf(state)?.outcome);
  const said = useMemo(() => (outcome && base ? differencesTold(rig, base, outcome) : []), [rig, base, outcome]);
  if (place === 0) return <div className={styles.differences}>{sayLayouts("layoutDifferences.first")}</div>;
  return (
    <div className={styles.differences}>
      <h4 className={styles.heading}>{sayLayouts("layoutDifferences.whatChanged")}</h4>
      {changes.length === 0 ? (
        <p>{sayLayouts("layoutDifferences.nothingChanged", { letters: LETTERS[0] })}</p>
      ) : (
        <ul className={styles.changes}>
          {changes.slice(0, MOST_CHANGES).map(({ path, label, before, after }) => (
            <li key={path}>
              {label}: <s>{before}</s> <b>{after}</b>
            </li>
          ))}
          {changes.length > MOST_CHANGES && (
            <li>{sayLayouts("layoutDifferences.more", { count: changes.length - MOST_CHANGES })}</li>
          )}
        </ul>
      )}
      {changes.length > 0 && outcome && base && (
        <>
          <h4 className={styles.heading}>{sayLayouts("layoutDifferences.whatDid")}</h4>
          <ul className={styles.did}>
            {outcome.verdict !== base.verdict && (
              <li>
                {sayLayouts("layoutDifferences.verdict", {
                  now: words.verdictWord(outcome),
                  before: words.verdictWord(base),
                })}
              </li>
            )}
            {said.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
            {said.length === 0 && outcome.verdict === base.verdict && (
              <li>{sayLayouts("layoutDifferences.sameFigures")}</li>
            )}
          </ul>
        </>
      )}
    </div>
  );
}
