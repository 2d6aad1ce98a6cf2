import { formatPercent } from "@secondline/rig";
import { type Outcome, QUICK_ALLOWANCE } from "@secondline/scenarios";
import { lazy, type ReactNode, Suspense } from "react";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { Meter } from "../design/Meter.tsx";
import { useSoon } from "../design/useSoon.ts";
import { VerdictMark } from "../design/VerdictMark.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { BasisNote } from "./BasisNote.tsx";
import { Cautions } from "./Cautions.tsx";
import { KeyNumbers } from "./KeyNumbers.tsx";
import { MarginKey } from "./MarginBar.tsx";
import { PartRow } from "./PartRow.tsx";
import styles from "./VerdictColumn.module.css";
import { WhatIfList } from "./WhatIfList.tsx";

const ChancesSection = lazy(async () => ({ default: (await import("../chances/ChancesSection.tsx")).ChancesSection }));

const WORDS = { holds: "Holds", thin: "Thin", fails: "Fails" } as const;

/**
 * The verdict over all what-ifs, part by part from harness to rock, and what it rests on. `children`: what stands
 * between the verdict and the parts on a narrow screen.
 */
export function VerdictColumn({ children }: { children?: ReactNode }) {
  const verdict = useSandbox((state) => state.run.verdict);
  const stale = useSandbox((state) => state.run.verdict?.rigVersion !== state.document.rigVersion);
  // Its word and sentence come first.
  const ready = useSoon(verdict !== undefined, 1);
  return (
    <div className={styles.column}>
      <div className={styles.scroll}>
        {verdict ? (
          <Sentence outcome={verdict.outcome} stale={stale} />
        ) : (
          <h2 className={styles.word}>No verdict yet</h2>
        )}
        <StudyState />
        {children}
        <KeyNumbers />
        {verdict && ready && <Parts outcome={verdict.outcome} />}
        {verdict && (
          <Suspense fallback={null}>
            <ChancesSection outcome={verdict.outcome} />
          </Suspense>
        )}
        {verdict && <More outcome={verdict.outcome} />}
      </div>
      <Cautions />
    </div>
  );
}

function Sentence({ outcome, stale }: { outcome: Outcome; stale: boolean }) {
  return (
    <header>
      <h2 className={styles.word} style={{ color: `var(--${outcome.verdict}-ink)` }}>
        <VerdictMark verdict={outcome.verdict} size={22} />
        {WORDS[outcome.verdict]}
        {stale && <span className={styles.stale}>before your last change</span>}
      </h2>
      <p className={styles.sentence}>{withoutWord(outcome.sentence, WORDS[outcome.verdict])}</p>
      {outcome.invented && <p className={styles.invented}>Demo rig: every number in it is invented.</p>}
    </header>
  );
}

/** The sentence opens with the verdict's word, which already stands above it. */
function withoutWord(sentence: string, word: string): string {
  if (!sentence.startsWith(`${word}: `)) return sentence;
  const rest = sentence.slice(word.length + 2);
  return rest.charAt(0).toUpperCase() + rest.slice(1);
}

function StudyState() {
  const study = useSandbox((state) => state.run.study);
  const faults = useSandbox((state) => state.document.issues.length);
  const { runNow, stop, look } = useActions();
  return (
    <>
      {faults > 0 && (
        <p className={styles.note}>
          {faults === 1 ? "One entry of the rig needs" : `${faults} entries of the rig need`} putting right. What you
          see is the rig before that.{" "}
          <button type="button" className={styles.link} onClick={() => look({ rigOpen: true, place: "rig" })}>
            Show
          </button>
        </p>
      )}
      {study.kind === "busy" && (
        <div className={styles.busy}>
          <Meter done={study.progress.done} doing={study.progress.doing} />
          <Button icon="stop" iconOnly label="Stop the study" onClick={stop} />
        </div>
      )}
      {study.kind === "stopped" && (
        <p className={styles.note}>
          The verdict was not computed to its end.{" "}
          <button type="button" className={styles.link} onClick={runNow}>
            Compute it
          </button>
        </p>
      )}
      {study.kind === "failed" && (
        <p className={styles.note} role="alert">
          The verdict was not computed: {shorten(study.message)}{" "}
          <button type="button" className={styles.link} onClick={runNow}>
            Try again
          </button>
        </p>
      )}
    </>
  );
}

function Parts({ outcome }: { outcome: Outcome }) {
  const selected = useSandbox((state) => state.session.selectedPart);
  const before = useSandbox((state) => (state.session.compare ? state.run.previousVerdict : undefined));
  const { look } = useActions();
  return (
    <section aria-label="Parts from harness to rock">
      <h3 className={styles.heading}>
        From harness to rock <span className={styles.scope}>the hardest of {outcome.whatIfs.length} what-ifs</span>
      </h3>
      <MarginKey required={outcome.requiredFactor} />
      <ul>
        {outcome.parts.map((part) => (
          <PartRow
            key={part.id}
            part={part}
            outcome={outcome}
            before={before?.parts.find(({ id }) => id === part.id)}
            open={selected === part.id}
            onOpenChange={(open) => look({ selectedPart: open ? part.id : undefined })}
          />
        ))}
      </ul>
    </section>
  );
}

function More({ outcome }: { outcome: Outcome }) {
  const quick = useSandbox((state) => state.run.verdict?.size === "quick");
  const busy = useSandbox((state) => state.run.study.kind === "busy");
  const { studyFully } = useActions();
  return (
    <div>
      {quick && (
        <p className={styles.note}>
          Quick look: the {outcome.whatIfs.length} what-ifs that usually govern, on a coarse mesh. It holds only where
          it leaves {formatPercent(QUICK_ALLOWANCE - 1)} more than you require.{" "}
          <button type="button" className={styles.link} disabled={busy} onClick={() => void studyFully()}>
            Compute every what-if on a finer one
          </button>
        </p>
      )}
      {outcome.incomplete.length > 0 && (
        <p className={styles.note}>
          {outcome.incomplete.length} of {outcome.whatIfs.length} what-ifs could not be computed reliably: the verdict
          is incomplete.
        </p>
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
      </Disclosure>
    </div>
  );
}

/** A study that fails altogether may give a reason per what-if. */
function shorten(text: string): string {
  return text.length > 240 ? `${text.slice(0, 240)}…` : text;
}
