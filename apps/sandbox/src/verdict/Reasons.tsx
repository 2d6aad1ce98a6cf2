import type { Basis, Outcome, PartOutcome, PersonMargin, Rig } from "@secondline/scenarios";
import { capital } from "@secondline/words";
import { tellNote } from "@secondline/words/notes";
import { sayVerdict } from "@secondline/words/page/verdict";
import { limitsTold, marginsTold } from "@secondline/workbench";
import { BasisNote } from "../design/BasisNote.tsx";
import { Paragraphs } from "../design/Lines.tsx";
import { quantity, words } from "../words.ts";
import styles from "./Reasons.module.css";
import { PartRuns, PullRuns } from "./RunStrip.tsx";
import { Watch } from "./Watch.tsx";

interface Props {
  part: PartOutcome;
  rig: Rig;
  outcome: Outcome;
}

/** Why a part's margin is what it is: against falls and after a failure, the strength factor by factor, the basis of each. */
export function Reasons({ part, rig, outcome }: Props) {
  const notLoaded = words.notLoaded(part);
  return (
    <div className={styles.reasons}>
      {notLoaded && <p>{capital(notLoaded)}.</p>}
      <Margins {...{ part, rig, outcome }} />
      <PartRuns {...{ part, rig, outcome }} />
      <Paragraphs of={part.flags.map(tellNote)} />
      <table className={styles.table}>
        <caption className="visually-hidden">
          {sayVerdict("reasons.factorsTitle", { partName: words.partName(rig, part.id) })}
        </caption>
        <tbody>
          {words.why(part).map(({ what, value }, i) => (
            <tr key={what}>
              <th scope="row">
                {what} <BasisNote basis={i === 0 ? part.ratedBasis : part.factors[i - 1]!.basis} />
              </th>
              <td>{value}</td>
            </tr>
          ))}
          <tr className={styles.total}>
            <th scope="row">{sayVerdict("reasons.middle")}</th>
            <td>{quantity.strength(part.strength)}</td>
          </tr>
          <tr>
            <th scope="row">{sayVerdict("reasons.strength5")}</th>
            <td>{quantity.strength(part.strength5)}</td>
          </tr>
        </tbody>
      </table>
      {part.bases.length > 0 && (
        <ul className={styles.bases}>
          {part.bases.map((basis) => (
            <li key={basisKey(basis)}>
              <BasisNote basis={basis} /> {tellNote(basis.note)}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** Margin, load and event, once for each class of events that loads the part. */
function Margins({ part, rig, outcome }: Props) {
  return marginsTold(part, rig, outcome).map(({ name, sentence, middle }) => (
    <div key={name}>
      <p>
        <b>{name}</b> {sentence}
      </p>
      {middle && (
        <p className={styles.spread}>
          {middle.sentence} <Watch whatIf={middle.whatIf} />
        </p>
      )}
    </div>
  ));
}

const basisKey = ({ kind, note }: Basis) => JSON.stringify([kind, note]);

interface PersonProps {
  outcome: Outcome;
  person: PersonMargin;
  rig: Rig;
}

/** In which what-if the pull on the person is hardest, and where its limits come from. */
export function PersonReasons({ outcome, person, rig }: PersonProps) {
  const event = outcome.whatIfs[person.event];
  return (
    <div className={styles.reasons}>
      {event && (
        <p>
          {sayVerdict("reasons.largestPull", {
            eventTitle: words.eventTitle(rig, event.whatIf),
            load: quantity.load(person.pull),
          })}{" "}
          <Watch whatIf={event.whatIf} />
        </p>
      )}
      <PullRuns {...{ rig, outcome }} />
      <ul className={styles.bases}>
        {limitsTold(person).map(({ basis, sentence }) => (
          <li key={sentence}>
            <BasisNote basis={basis} /> {sentence}
          </li>
        ))}
      </ul>
    </div>
  );
}
