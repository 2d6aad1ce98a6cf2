import { VERSION } from "@secondline/scenarios";
import { CONSTANTS } from "@secondline/strength";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { DialogSheet } from "../design/Sheet.tsx";
import styles from "./EvidenceSheet.module.css";
import summary from "./evidence.json";

interface Props {
  open: boolean;
  onClose: () => void;
}

const { counts, sources } = summary;
const percent = (share: number) => `${Math.ceil(100 * share)} %`;

/** What the numbers were checked against: theory, other programs, strengths, and falls that somebody measured. */
export default function EvidenceSheet({ open, onClose }: Props) {
  const { kinds } = counts;
  const strengths = CONSTANTS.size;
  const assumed = counts.constants.assumed;
  return (
    <DialogSheet open={open} onClose={onClose} title="How do we know?">
      <div className={styles.text}>
        <p>
          <strong>No number has been checked against a fall that somebody measured.</strong> {counts.outside} checks are
          against numbers from outside: {kinds.printed} printed, {kinds["second hand"]} second hand,{" "}
          {kinds["from memory"]} from memory, {kinds["other program"]} by other programs. {counts.lineProgram} of these
          are against one program of another author. {kinds.computed} more are against numbers that we computed
          ourselves from published equations. {counts.disagree} are known not to agree.
        </p>
        <h3>Theory</h3>
        <p>
          Closed forms, printed examples and statistics. They say that the equations are solved well, not that they are
          the right ones for webbing, a body and an anchor on a rock.
        </p>
        <Sources part="theory" />
        <h3>Other programs</h3>
        <p>
          The same problems, solved by programs that are not ours. Whole falls that a backup catches are compared as
          ensembles, for a gram more on the walker moves a load by 5 to 15 %.
        </p>
        <Sources part="programs" />
        <h3>Strengths</h3>
        <p>
          What a part still holds rests on {strengths} numbers. {counts.constants.published} are published,{" "}
          {counts.constants["seen second hand"]} seen second hand, {counts.constants["from memory"]} from memory and{" "}
          {assumed} assumed. Own break tests take their place.
        </p>
        <Strengths />
        <h3>Validation</h3>
        <p>
          None yet against a measured fall. What would count: the recording of a load cell at a named place of a rig,
          with the rig's file, the walker's mass and where the fall began. The command{" "}
          <code>secondline measured RECORDING.csv RIG.json</code> holds such a recording against the model.
        </p>
        <About />
        <p className={styles.soft}>
          Every check with its source, its difference and its tolerance is in <code>docs/EVIDENCE.md</code>, which the
          tests write.
        </p>
      </div>
    </DialogSheet>
  );
}

/** Whose work the page is, and under which licences. The text comes when it is asked for. */
function About() {
  const [notices, setNotices] = useState<string>();
  const bring = () =>
    fetch("./notices.txt")
      .then((answer) => (answer.ok ? answer.text() : Promise.reject(new Error(String(answer.status)))))
      .then(setNotices, () =>
        setNotices("The licences did not arrive. They are in the file notices.txt beside the page."),
      );
  return (
    <>
      <h3>This program</h3>
      <p>Secondline {VERSION}, under the licence Apache-2.0. It contains the work of others, under their licences.</p>
      {notices === undefined ? (
        <div>
          <Button label="Licences of others' work" onClick={() => void bring()} />
        </div>
      ) : (
        <pre className={styles.notices}>{notices}</pre>
      )}
    </>
  );
}

function Sources({ part }: { part: string }) {
  const own = sources.filter((source) => source.part === part);
  return (
    <Disclosure title={`The ${own.length} sources`}>
      <ul className={styles.list}>
        {own.map(({ title, year, kind, checks, most, disagree }) => (
          <li key={title}>
            {title} ({year})
            <span className={styles.soft}>
              {kind}; {checks === 1 ? "1 check" : `${checks} checks`}, {percent(most)} of the tolerance used at most
              {disagree > 0 && `, but ${disagree} of them do not agree`}
            </span>
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}

function Strengths() {
  const known = [...CONSTANTS].filter(([, { status }]) => status !== "assumed");
  return (
    <Disclosure title={`The ${known.length} that are not assumed`}>
      <ul className={styles.list}>
        {known.map(([key, { value, unit, status, meaning }]) => (
          <li key={key}>
            {meaning}
            <span className={styles.soft}>
              {`${value} ${unit}`.trim()}; {status}
            </span>
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}
