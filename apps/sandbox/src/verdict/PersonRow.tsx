import { Collapsible } from "@base-ui/react/collapsible";
import { type Outcome, PULL_LIMITS, type Rig } from "@secondline/scenarios";
import { sayPage } from "@secondline/words/page/page";
import { lazy, useState } from "react";
import { Later } from "../design/Later.tsx";
import { VerdictMark, verdictColour } from "../design/VerdictMark.tsx";
import { quantity, words } from "../words.ts";
import barStyles from "./MarginBar.module.css";
import styles from "./PartRow.module.css";

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
  return (
    <li className={styles.item} data-part="person" data-verdict={verdict}>
      <Collapsible.Root open={open} onOpenChange={setOpen}>
        <Collapsible.Trigger className={styles.row}>
          <VerdictMark verdict={verdict} />
          <span className={styles.name}>
            <span>{words.say("fact.pull")}</span>
          </span>
          <span className={styles.plot}>
            <span
              className={barStyles.bar}
              aria-hidden="true"
              style={{ "--tone": verdictColour(verdict, "fill") } as React.CSSProperties}
            >
              <span className={barStyles.low} style={{ width: share(person.demand) }} />
              {PULL_LIMITS.map(({ limit }) => (
                <span key={limit} className={barStyles.tick} style={{ left: share(limit) }} />
              ))}
            </span>
          </span>
          <span className={styles.margin}>{quantity.load(person.demand)}</span>
          <span className={styles.word} style={{ color: verdictColour(verdict) }}>
            {verdict === "open" ? words.partVerdict("open") : words.say(`person.grade.${person.grade}`)}
          </span>
          <em className={styles.first}>{words.band(person.demand, [person.low, person.high])}</em>
        </Collapsible.Trigger>
        <Collapsible.Panel>
          <Later what={sayPage("personRow.whatLimitsRest")}>
            <PersonReasons {...{ outcome, person, rig }} />
          </Later>
        </Collapsible.Panel>
      </Collapsible.Root>
    </li>
  );
}
