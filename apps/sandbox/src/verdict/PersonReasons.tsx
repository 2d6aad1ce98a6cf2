import { type Outcome, type PersonMargin, PULL_LIMITS, type Rig } from "@secondline/scenarios";
import { quantity, words } from "../words.ts";
import { BasisNote } from "./BasisNote.tsx";
import styles from "./Reasons.module.css";
import { Watch } from "./Watch.tsx";

interface Props {
  outcome: Outcome;
  person: PersonMargin;
  rig: Rig;
}

/** In which what-if the pull on the person is hardest, and where its limits come from. */
export function PersonReasons({ outcome, person, rig }: Props) {
  const event = outcome.whatIfs[person.event];
  return (
    <div className={styles.reasons}>
      {event && (
        <p>
          {words.eventTitle(rig, event.whatIf)}. The largest pull seen: {quantity.load(person.pull)}.{" "}
          <Watch whatIf={event.whatIf} />
        </p>
      )}
      <ul className={styles.bases}>
        {PULL_LIMITS.map(({ limit, basis }) => (
          <li key={limit}>
            <BasisNote basis={basis} />{" "}
            {person.demand > limit
              ? words.say("person.above", { limit: quantity.load(limit), note: basis.note })
              : `${quantity.load(limit)}: ${basis.note}`}
          </li>
        ))}
      </ul>
    </div>
  );
}
