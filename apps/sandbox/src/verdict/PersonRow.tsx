import { type Outcome, PULL_LIMITS, type Rig } from "@secondline/scenarios";
import { sayPage } from "@secondline/words/page/page";
import { lazy, useState } from "react";
import { verdictColour } from "../design/VerdictMark.tsx";
import { quantity, words } from "../words.ts";
import styles from "./MarginBar.module.css";
import { RowFrame } from "./RowFrame.tsx";

const PersonReasons = lazy(async () => ({ default: (await import("./Reasons.tsx")).PersonReasons }));

/** The scale goes a little beyond the last limit [-]. */
const SCALE_OVER_LAST_LIMIT = 1.2;

/** The pull on the person, a row of its own: against limits for a body, not against a strength. */
export function PersonRow({ outcome, rig, isWhole }: { outcome: Outcome; rig: Rig; isWhole: boolean }) {
  const [open, setOpen] = useState(false);
  const { person } = outcome;
  if (!person) return null;
  const verdict = person.grade === "keeps" ? (isWhole ? "holds" : "open") : person.grade;
  const end = SCALE_OVER_LAST_LIMIT * PULL_LIMITS.at(-1)!.limit;
  const share = (newton: number) => `${(Math.min(newton, end) / end) * 100}%`;
  const bar = (
    <span
      className={styles.bar}
      aria-hidden="true"
      style={{ "--tone": verdictColour(verdict, "fill") } as React.CSSProperties}
    >
      <span className={styles.low} style={{ width: share(person.demand) }} />
      {PULL_LIMITS.map(({ limit }) => (
        <span key={limit} className={styles.tick} style={{ left: share(limit) }} />
      ))}
    </span>
  );
  return (
    <RowFrame
      id="person"
      title={words.say("fact.pull")}
      {...{ verdict, bar, open }}
      onOpenChange={setOpen}
      number={quantity.load(person.demand)}
      word={verdict === "open" ? words.partVerdict("open") : words.say(`person.grade.${person.grade}`)}
      hints={[words.band(person.demand, [person.low, person.high])]}
      what={sayPage("personRow.whatLimitsRest")}
    >
      <PersonReasons {...{ outcome, person, rig }} />
    </RowFrame>
  );
}
