import { VERSION } from "@secondline/scenarios";
import { sayEvidence } from "@secondline/words/page/evidence";
import { checksCounted, evidenceParts } from "@secondline/workbench";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { DialogSheet } from "../design/Sheet.tsx";
import styles from "./EvidenceSheet.module.css";

/** What the numbers were checked against. */
export default function EvidenceSheet({ open, onClose }: { open: boolean; onClose: () => void }) {
  return (
    <DialogSheet open={open} onClose={onClose} title={sayEvidence("evidenceSheet.howDoWe")}>
      <div className={styles.text}>
        <p>
          <strong>{sayEvidence("evidenceSheet.noNumberBeen")}</strong> {checksCounted()}
        </p>
        {evidenceParts().map(({ title, says, list }) => (
          <section key={title} className={styles.text}>
            <h3>{title}</h3>
            <p>
              <Coded text={says} />
            </p>
            {list && (
              <Disclosure title={list.title}>
                <ul className={styles.list}>
                  {list.items.map(({ what, how }) => (
                    <li key={what}>
                      {what}
                      <span className={styles.soft}>{how}</span>
                    </li>
                  ))}
                </ul>
              </Disclosure>
            )}
          </section>
        ))}
        <About />
        <p className={styles.soft}>
          <Coded text={sayEvidence("evidenceSheet.everyCheckSource")} />
        </p>
      </div>
    </DialogSheet>
  );
}

/** A sentence in which what is typed stands between backquotes. */
function Coded({ text }: { text: string }) {
  return text.split("`").map((piece, i) => (i % 2 === 0 ? piece : <code key={piece}>{piece}</code>));
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
