import type { Outcome, Outlook, PartDate } from "@secondline/scenarios";
import { weakness } from "@secondline/words";

import { dayText } from "@secondline/words/dates";
import { tellFault } from "@secondline/words/faults";
import { tellNote } from "@secondline/words/notes";
import { sayWear } from "@secondline/words/page/wear";
import { untilWords } from "@secondline/words/until";
import { outlookOf, type TakeDownState, testsTakenWords } from "@secondline/workbench/record";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { VerdictMark } from "../design/VerdictMark.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { useWear } from "../wearInHand/useWear.ts";
import { words } from "../words.ts";
import { Messages } from "./EntryForm.tsx";
import styles from "./wear.module.css";

/** The verdict of the day that is shown, until when the open rig may stay up, and part by part. */
export function TakeDownPart({ state }: { state: TakeDownState }) {
  return (
    <section className={styles.section} aria-label={sayWear("takeDownPart.takeDownDate")}>
      <h3 className={styles.h3}>{sayWear("takeDownPart.title")}</h3>
      <Body state={state} />
      <Tests />
    </section>
  );
}

function Body({ state }: { state: TakeDownState }) {
  const { look, leaveOut } = useActions();
  const on = useWear((wear) => wear.on);
  switch (state.kind) {
    case "noFit":
      return <p className={styles.serif}>{sayWear("takeDownPart.noDateOfThisRig")}</p>;
    case "unlike":
      return <p className={styles.serif}>{sayWear("takeDownPart.noDateInvented")}</p>;
    case "leftOut":
      return (
        <>
          <p className={styles.serif}>{sayWear("takeDownPart.noDateLeftOut")}</p>
          <Button label={sayWear("takeDownPart.useThem")} onClick={() => leaveOut(false)} />
        </>
      );
    case "unfit":
      return (
        <>
          <p className={styles.wrong}>{sayWear("takeDownPart.noDateMisfit")}</p>
          <Messages messages={state.issues.map(({ message }) => tellFault(message))} />
        </>
      );
    case "searching":
      return (
        <>
          {state.soFar && state.soFar.verdict !== "open" ? (
            <Verdict outcome={state.soFar} on={on} soFar />
          ) : (
            <p className={styles.serif}>{sayWear("takeDownPart.noDateYet", { day: dayText(on) })}</p>
          )}
          <Button label={sayWear("takeDownPart.lookRig")} onClick={() => look({ view: "rig" })} />
        </>
      );
    case "ready":
      return <Ready {...state} on={on} outlook={outlookOf(state)} />;
  }
}

/** The same word and mark as beside the rig. */
function Verdict({ outcome, on, soFar = false }: { outcome: Outcome; on: string; soFar?: boolean }) {
  return (
    <p className={styles.serif}>
      <VerdictMark verdict={outcome.verdict} size={18} /> <strong>{words.verdictWord(outcome)}</strong>{" "}
      {sayWear(soFar ? "takeDownPart.onDaySoFar" : "takeDownPart.onDay", { day: dayText(on) })}
    </p>
  );
}

type ReadyProps = Extract<TakeDownState, { kind: "ready" }> & { on: string; outlook: Outlook | undefined };

function Ready({ outcome, job, on, outlook }: ReadyProps) {
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const title = <Verdict {...{ outcome, on }} />;
  if (job.kind === "failed") {
    return (
      <>
        {title}
        <p className={styles.wrong}>{sayWear("takeDownPart.noDate", { message: job.message })}</p>
      </>
    );
  }
  if (!outlook) {
    return (
      <>
        {title}
        <p className={styles.soft}>{sayWear("takeDownPart.computing")}</p>
      </>
    );
  }
  const { parts, horizon } = outlook;
  const [soon, beyond] = [false, true].map((is) => parts.filter(({ when }) => (when === "beyond") === is));
  return (
    <div className={styles.outlook}>
      {title}
      <p className={styles.serif}>{untilWords.sentence(rig, outlook, outcome)}</p>
      <p className={styles.note}>{sayWear("takeDownPart.howItIsFound")}</p>
      <Parts parts={soon!} {...{ outcome, horizon }} />
      {beyond!.length > 0 && (
        <Disclosure
          level={4}
          title={sayWear("takeDownPart.partsBeyondHorizon", {
            parts: sayWear("takeDownPart.parts", { count: beyond!.length }),
            day: dayText(horizon),
          })}
        >
          <Parts parts={beyond!} {...{ outcome, horizon }} />
        </Disclosure>
      )}
    </div>
  );
}

interface PartsProps {
  parts: readonly PartDate[];
  outcome: Outcome;
  horizon: string;
}

function Parts({ parts, ...rest }: PartsProps) {
  return (
    <ul className={styles.parts}>
      {parts.map((part) => (
        <Part key={part.part} part={part} {...rest} />
      ))}
    </ul>
  );
}

/** A part with its verdict of today, which is the verdict's own, and its date. */
function Part({ part, outcome, horizon }: { part: PartDate } & Omit<PartsProps, "parts">) {
  const rig = useSandbox((state) => state.assessment.assessed.rig);
  const today = outcome.parts.find(({ id }) => id === part.part);
  return (
    <li>
      <p className={styles.partName}>
        {today && <VerdictMark verdict={today.verdict} size={14} />} {words.partName(rig, part.part)}
        {today && <span className={styles.soft}>, {words.partVerdict(today.verdict)}</span>}
        {part.reason && part.reason !== "webbing" && <span className={styles.soft}>, {weakness(part.reason)}</span>}
      </p>
      <p className={styles.note}>{`${untilWords.part(part, horizon)}: ${untilWords.margins(part, horizon)}.`}</p>
      {part.flags.map((flag) => (
        <p key={JSON.stringify(flag)} className={styles.flagLine}>
          ▲ {tellNote(flag)}
        </p>
      ))}
    </li>
  );
}

/** How many break tests count, as the verdict has it. */
function Tests() {
  const log = useWear((wear) => wear.work.log);
  const assessment = useSandbox((state) => state.assessment);
  const given = log.tests.length;
  if (given === 0) return null;
  return (
    <>
      <p className={styles.note}>{testsTakenWords(assessment, given)}</p>
      {assessment.assessed.taken.tests && log.invented && (
        <p className={styles.warn}>{sayWear("takeDownPart.testsInvented")}</p>
      )}
    </>
  );
}
