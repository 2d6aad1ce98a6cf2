import { formatPercent } from "@secondline/rig";
import type { PartTakeDown } from "@secondline/strength";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { Tick } from "../design/Tick.tsx";
import { VerdictMark } from "../design/VerdictMark.tsx";
import { useActions } from "../state/useSandbox.ts";
import { dateWords } from "./days.ts";
import { partTone, partWords, type Today, takeDownSentence, takeDownTone, whenWords } from "./takeDownWords.ts";
import { latestOf } from "./useAnalysis.ts";
import type { TakeDownState, TakeDowns } from "./useTakeDown.ts";
import { useWear, useWearActions } from "./useWear.ts";
import styles from "./wear.module.css";

const CONFIDENCES = [
  { value: "0.9", label: "90 %" },
  { value: "0.95", label: "95 %" },
  { value: "0.99", label: "99 %" },
];

/** Until when the rig in hand may stay up, in one sentence, and part by part. */
export function TakeDownPart({ state }: { state: TakeDownState }) {
  const confidence = useWear((wear) => wear.confidence);
  const log = useWear((wear) => wear.history.present.log);
  const useTests = useWear((wear) => wear.history.present.useTests);
  const { look, change } = useWearActions();
  return (
    <section className={styles.section} aria-label="Take-down date">
      <h3 className={styles.h3}>Until when it may stay up</h3>
      <Body state={state} />
      <Choice
        label="Share of such parts that must have the factor"
        value={String(confidence)}
        options={CONFIDENCES}
        onChange={(value) => look({ confidence: Number(value) })}
      />
      <Tick
        label={`Count the ${log.tests.length} own break tests`}
        checked={useTests}
        onChange={(on) => change({ useTests: on }, on ? "own break tests counted" : "own break tests left out")}
      />
      {useTests && log.invented && (
        <p className={styles.warn}>
          ▲ These break tests are invented: what rests on them says nothing about real webbing.
        </p>
      )}
    </section>
  );
}

function Body({ state }: { state: TakeDownState }) {
  const { look } = useActions();
  if (state.kind === "noFit")
    return <p className={styles.serif}>No date: the record has nothing in the rig in hand on this day.</p>;
  if (state.kind !== "ready") {
    return (
      <>
        <p className={styles.serif}>No date yet: the loads of the rig in hand are not computed.</p>
        <Button label="Look at the rig" onClick={() => look({ view: "rig" })} />
      </>
    );
  }
  const { answer } = state;
  const found = latestOf(answer);
  if (answer.kind === "failed") return <p className={styles.wrong}>✕ No date: {answer.message}</p>;
  if (!found) return <p className={styles.soft}>Looking ahead two years…</p>;
  return <Found found={found} busy={answer.kind === "busy"} old={state.old} today={state.today} />;
}

function Found({ found, busy, old, today }: { found: TakeDowns; busy: boolean; old: boolean; today: Today }) {
  const { chosen, strict, central, confidence } = found;
  const [dated, beyond] = [false, true].map((is) => chosen.parts.filter(({ when }) => (when === "beyond") === is));
  return (
    <div className={styles.outlook} aria-busy={busy}>
      <p className={styles.serif}>
        <VerdictMark verdict={takeDownTone(chosen, today)} size={18} /> <span>{takeDownSentence(chosen, today)}</span>
      </p>
      <p className={styles.note}>
        At the present rate of use, for {formatPercent(confidence)} of such parts. For 99 % of them: {whenWords(strict)}
        . For half of them: {whenWords(central)}.{old && " The loads are from before the last change to the rig."}
      </p>
      <Parts parts={dated!} {...{ today }} horizon={chosen.horizon} />
      {beyond!.length > 0 && (
        <Disclosure
          level={4}
          title={`${beyond!.length === 1 ? "1 part" : `${beyond!.length} parts`} without a date until ${dateWords(chosen.horizon)}`}
        >
          <Parts parts={beyond!} {...{ today }} horizon={chosen.horizon} />
        </Disclosure>
      )}
    </div>
  );
}

interface PartsProps {
  parts: readonly PartTakeDown[];
  today: Today;
  horizon: string;
}

function Parts({ parts, today, horizon }: PartsProps) {
  return (
    <ul className={styles.parts}>
      {parts.map((part) => (
        <Part key={part.id} {...{ part, today, horizon }} />
      ))}
    </ul>
  );
}

function Part({ part, today, horizon }: { part: PartTakeDown; today: Today; horizon: string }) {
  return (
    <li>
      <p className={styles.partName}>
        <VerdictMark verdict={partTone(part, today)} size={14} /> {part.name}
        {part.reason && part.reason !== "webbing" && <span className={styles.soft}>, {part.reason}</span>}
      </p>
      <p className={styles.note}>{partWords(part, horizon)}.</p>
      {part.flags.map((flag) => (
        <p key={flag} className={styles.flagLine}>
          ▲ {flag}
        </p>
      ))}
    </li>
  );
}
