import { VERSION } from "@secondline/scenarios";
import { CONSTANTS } from "@secondline/strength";
import { sayEvidence } from "@secondline/words/page/evidence";
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
    <DialogSheet open={open} onClose={onClose} title={sayEvidence("evidenceSheet.howDoWe")}>
      <div className={styles.text}>
        <p>
          <strong>{sayEvidence("evidenceSheet.noNumberBeen")}</strong>{" "}
          {sayEvidence("evidenceSheet.checksAgainstNumbers", {
            outside: counts.outside,
            printed: kinds.printed,
            secondHand: kinds["second hand"],
            memory: kinds["from memory"],
            programs: kinds["other program"],
            lineProgram: counts.lineProgram,
            computed: kinds.computed,
            disagree: counts.disagree,
          })}
        </p>
        <h3>{sayEvidence("evidenceSheet.theory")}</h3>
        <p>{sayEvidence("evidenceSheet.closedFormsPrinted")}</p>
        <Sources part="theory" />
        <h3>{sayEvidence("evidenceSheet.otherPrograms")}</h3>
        <p>{sayEvidence("evidenceSheet.sameProblemsSolved")}</p>
        <Sources part="programs" />
        <h3>{sayEvidence("evidenceSheet.strengths")}</h3>
        <p>
          {sayEvidence("evidenceSheet.whatPartStill", {
            strengths,
            published: counts.constants.published,
            secondHand: counts.constants["seen second hand"],
            memory: counts.constants["from memory"],
            assumed,
          })}
        </p>
        <Strengths />
        <h3>{sayEvidence("evidenceSheet.validation")}</h3>
        <p>
          {sayEvidence("evidenceSheet.noneYetAgainst")}{" "}
          <code>{sayEvidence("evidenceSheet.secondlineMeasuredRecording")}</code>{" "}
          {sayEvidence("evidenceSheet.holdsSuchRecording")}
        </p>
        <About />
        <p className={styles.soft}>
          {sayEvidence("evidenceSheet.everyCheckSource")} <code>{sayEvidence("evidenceSheet.docsEvidenceMd")}</code>
          {sayEvidence("evidenceSheet.whichTestsWrite")}
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
      .then(setNotices, () => setNotices(sayEvidence("evidenceSheet.licencesDidNot")));
  return (
    <>
      <h3>{sayEvidence("evidenceSheet.program")}</h3>
      <p>{sayEvidence("evidenceSheet.secondlineUnderLicence", { version: VERSION })}</p>
      {notices === undefined ? (
        <div>
          <Button label={sayEvidence("evidenceSheet.licencesOthersWork")} onClick={() => void bring()} />
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
    <Disclosure title={sayEvidence("evidenceSheet.sources", { count: own.length })}>
      <ul className={styles.list}>
        {own.map(({ title, year, kind, checks, most, disagree }) => (
          <li key={title}>
            {title} ({year})
            <span className={styles.soft}>
              {sayEvidence(disagree > 0 ? "evidenceSheet.checksDisagree" : "evidenceSheet.checksToleranceUsed", {
                kind,
                checks,
                percent: percent(most),
                disagree,
              })}
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
    <Disclosure title={sayEvidence("evidenceSheet.notAssumed", { count: known.length })}>
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
