import { sayPage } from "@secondline/words/page/page";
import { foundOf, outcomeOf } from "@secondline/workbench";
import { lazy, type ReactNode } from "react";
import { Later } from "../design/Later.tsx";
import { useSoon } from "../design/useSoon.ts";
import { useSandbox } from "../state/useSandbox.ts";
import { Cautions } from "./Cautions.tsx";
import { Parts } from "./Parts.tsx";
import styles from "./VerdictColumn.module.css";
import { VerdictHead } from "./VerdictHead.tsx";

const ChancesSection = lazy(async () => ({ default: (await import("../chances/ChancesSection.tsx")).ChancesSection }));
const LastChange = lazy(async () => ({ default: (await import("./FirstSight.tsx")).LastChange }));
const KeyNumbers = lazy(async () => ({ default: (await import("./KeyNumbers.tsx")).KeyNumbers }));
const VerdictMore = lazy(async () => ({ default: (await import("./VerdictMore.tsx")).VerdictMore }));

/**
 * The verdict of this very state over all what-ifs, part by part from harness to rock, and what it rests on; while it is looked
 * for, what is found so far. On a narrow screen `first` stands below the verdict's sentence, and `children` before the parts.
 */
export function VerdictColumn({ first, children }: { first?: ReactNode; children?: ReactNode }) {
  const outcome = useSandbox(outcomeOf);
  // Its word and sentence come first.
  const ready = useSoon(outcome !== undefined, 1);
  return (
    <div className={styles.column}>
      <div className={styles.scroll}>
        <VerdictHead outcome={outcome}>{first}</VerdictHead>
        <Later what={sayPage("verdictColumn.changePart")}>
          <LastChange />
        </Later>
        {children}
        {outcome && ready && <Parts outcome={outcome} />}
        <Later what={sayPage("verdictColumn.keyNumbersPart")}>
          <KeyNumbers />
        </Later>
        <Chances />
        {outcome && (
          <Later what={sayPage("verdictColumn.morePart")}>
            <VerdictMore outcome={outcome} />
          </Later>
        )}
      </div>
      <Cautions />
    </div>
  );
}

function Chances() {
  const outcome = useSandbox((state) => foundOf(state)?.outcome);
  return (
    outcome && (
      <Later what={sayPage("verdictColumn.chancesPart")}>
        <ChancesSection outcome={outcome} />
      </Later>
    )
  );
}
