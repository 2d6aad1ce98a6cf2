import { frontierPlot } from "@secondline/figures/layouts";
import { frontier } from "@secondline/scenarios";
import { englishCompareWords as compareWords } from "@secondline/words/compare";
import { sayLayouts } from "@secondline/words/page/layouts";
import { foundOf, type Layout, LETTERS } from "@secondline/workbench";
import { memo, useMemo } from "react";
import { Lines } from "../design/Lines.tsx";
import { PlotInPlace } from "../picture/PlotInPlace.tsx";
import styles from "./LayoutFrontier.module.css";
import { useEach } from "./useLayouts.ts";

/** Load against drop against weight of all layouts, and which layouts no other layout beats. */
export const LayoutFrontier = memo(function LayoutFrontier({ list }: { list: readonly Layout[] }) {
  const rigs = useEach(list, ({ assessment }) => assessment.assessed.rig);
  // What part of a search has found is not held against the whole of another.
  const outcomes = useEach(list, (state) => foundOf(state)?.outcome);
  const layouts = useMemo(() => {
    const whole = outcomes.flatMap((outcome, i) => (outcome ? [{ rig: rigs[i]!, outcome }] : []));
    return whole.length === rigs.length ? frontier(whole) : undefined;
  }, [rigs, outcomes]);
  const plot = useMemo(() => layouts && frontierPlot(layouts, LETTERS), [layouts]);
  return (
    <section className={styles.place} aria-label={compareWords.sayFrontier("frontier.title")}>
      <h3 className={styles.title}>{compareWords.sayFrontier("frontier.title")}</h3>
      {layouts ? (
        <Lines className={styles.sentences} of={compareWords.frontierSentences(layouts, LETTERS)} />
      ) : (
        <p className={`${styles.note} ${styles.coming}`}>{sayLayouts("layoutFrontier.coming")}</p>
      )}
      <PlotInPlace plot={plot} className={styles.drawing} />
      {layouts && (
        <p className={styles.note}>
          {compareWords.sayFrontier("frontier.marks")} {compareWords.sayFrontier("frontier.how")}
        </p>
      )}
    </section>
  );
});
