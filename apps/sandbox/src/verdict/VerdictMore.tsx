import type { Outcome } from "@secondline/scenarios";
import { tellNote } from "@secondline/words/notes";
import { sayVerdict } from "@secondline/words/page/verdict";
import { BasisNote } from "../design/BasisNote.tsx";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { Lines } from "../design/Lines.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";
import { sayLater } from "../wordsLater.ts";
import { FollowUps, Singles } from "./Singles.tsx";
import styles from "./VerdictColumn.module.css";
import { WhatIfList } from "./WhatIfList.tsx";

/** Below the parts: every reason, what has no second, what follows, the what-ifs, and what the verdict rests on. */
export function VerdictMore({ outcome }: { outcome: Outcome }) {
  const { rig, notes } = useSandbox((state) => state.assessment.assessed);
  const { reasons, singles, followUps, blanks } = outcome;
  const count = singles.filter(({ single }) => single).length;
  const { look } = useActions();
  return (
    <div>
      <p className={styles.further}>
        <Button label={sayVerdict("verdictMore.howFar")} onClick={() => look({ view: "howFar" })} />
      </p>
      {notes.length > 0 && (
        <Disclosure title={words.say("head.notes")}>
          <Lines className={styles.bases} of={notes.map(tellNote)} />
        </Disclosure>
      )}
      {reasons.length > 1 && (
        <Disclosure title={sayVerdict("verdictMore.allReasons", { count: reasons.length })}>
          <ul className={styles.bases}>
            {reasons
              .map((reason) => words.reason(rig, outcome, reason))
              .map((text) => (
                <li key={text}>{text}</li>
              ))}
          </ul>
        </Disclosure>
      )}
      <Disclosure title={sayVerdict("verdictMore.singles", { singles: count, parts: singles.length })}>
        <Singles {...{ outcome, rig }} />
      </Disclosure>
      {followUps.length > 0 && (
        <Disclosure title={words.say("head.follows")}>
          <FollowUps {...{ outcome, rig }} />
        </Disclosure>
      )}
      <Disclosure title={sayVerdict("verdictMore.whatIfs", { count: outcome.whatIfs.length })}>
        <WhatIfList outcome={outcome} />
      </Disclosure>
      <Disclosure title={sayVerdict("verdictMore.grounds")}>
        <ul className={styles.bases}>
          {outcome.weakestBases.map((basis) => (
            <li key={JSON.stringify(basis)}>
              <BasisNote basis={basis} /> {tellNote(basis.note)}
            </li>
          ))}
        </ul>
        {blanks.length > 0 && <h4 className={styles.blanks}>{sayLater("head.blanks")}</h4>}
        <Lines className={styles.bases} of={words.blanks(rig, outcome)} />
      </Disclosure>
    </div>
  );
}
