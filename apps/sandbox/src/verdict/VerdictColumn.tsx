import type { Outcome } from "@secondline/scenarios";
import { lazy, type ReactNode } from "react";
import { Disclosure } from "../design/Disclosure.tsx";
import { Later } from "../design/Later.tsx";
import { useSoon } from "../design/useSoon.ts";
import { useSandbox } from "../state/useSandbox.ts";
import { foundOf, outcomeOf } from "../state/verdictOf.ts";
import { words } from "../words.ts";
import { BasisNote } from "./BasisNote.tsx";
import { Cautions } from "./Cautions.tsx";
import { KeyNumbers } from "./KeyNumbers.tsx";
import { Parts } from "./Parts.tsx";
import { FollowUps, Singles } from "./Singles.tsx";
import styles from "./VerdictColumn.module.css";
import { VerdictHead } from "./VerdictHead.tsx";
import { WhatIfList } from "./WhatIfList.tsx";

const ChancesSection = lazy(async () => ({ default: (await import("../chances/ChancesSection.tsx")).ChancesSection }));

/**
 * The verdict of this very state over all what-ifs, part by part from harness to rock, and what it rests on; while it is looked
 * for, what is found so far. `children`: what stands between the verdict and the parts on a narrow screen.
 */
export function VerdictColumn({ children }: { children?: ReactNode }) {
  const outcome = useSandbox(outcomeOf);
  // Its word and sentence come first.
  const ready = useSoon(outcome !== undefined, 1);
  return (
    <div className={styles.column}>
      <div className={styles.scroll}>
        <VerdictHead outcome={outcome} />
        {children}
        {outcome && ready && <Parts outcome={outcome} />}
        <KeyNumbers />
        <Chances />
        {outcome && <More outcome={outcome} />}
      </div>
      <Cautions />
    </div>
  );
}

function Chances() {
  const outcome = useSandbox((state) => foundOf(state)?.outcome);
  return (
    outcome && (
      <Later what="What works out chances">
        <ChancesSection outcome={outcome} />
      </Later>
    )
  );
}

function More({ outcome }: { outcome: Outcome }) {
  const { rig, notes } = useSandbox((state) => state.assessment.assessed);
  const { reasons, singles, followUps, blanks } = outcome;
  const count = singles.filter(({ single }) => single).length;
  return (
    <div>
      {notes.length > 0 && (
        <Disclosure title={words.say("head.notes")}>
          <ul className={styles.bases}>
            {notes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
        </Disclosure>
      )}
      {reasons.length > 1 && (
        <Disclosure title={`All ${reasons.length} reasons`}>
          <ul className={styles.bases}>
            {reasons
              .map((reason) => words.reason(rig, outcome, reason))
              .map((text) => (
                <li key={text}>{text}</li>
              ))}
          </ul>
        </Disclosure>
      )}
      <Disclosure title={`One part gone: ${count} of ${singles.length} have no second`}>
        <Singles {...{ outcome, rig }} />
      </Disclosure>
      {followUps.length > 0 && (
        <Disclosure title={words.say("head.follows")}>
          <FollowUps {...{ outcome, rig }} />
        </Disclosure>
      )}
      <Disclosure title={`The ${outcome.whatIfs.length} what-ifs`}>
        <WhatIfList outcome={outcome} />
      </Disclosure>
      <Disclosure title="What the verdict rests on">
        <ul className={styles.bases}>
          {outcome.weakestBases.map((basis) => (
            <li key={`${basis.kind}${basis.note}`}>
              <BasisNote basis={basis} /> {basis.note}
            </li>
          ))}
        </ul>
        {blanks.length > 0 && <h4 className={styles.blanks}>{words.say("head.blanks")}</h4>}
        <ul className={styles.bases}>
          {words.blanks(rig, outcome).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </Disclosure>
    </div>
  );
}
