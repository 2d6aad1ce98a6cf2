import { formatPercent } from "@secondline/rig";
import type { PartTakeDown, TakeDown } from "@secondline/strength";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { Tick } from "../design/Tick.tsx";
import { VerdictMark } from "../design/VerdictMark.tsx";
import { useActions } from "../state/useSandbox.ts";
import { dateWords } from "./days.ts";
import { latestOf } from "./useAnalysis.ts";
import { partWords, type TakeDownState, type TakeDowns } from "./useTakeDown.ts";
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
  return <Found found={found} busy={answer.kind === "busy"} old={state.old} factor={state.factor} />;
}

function Found({ found, busy, old, factor }: { found: TakeDowns; busy: boolean; old: boolean; factor: number }) {
  const { chosen, strict, central, confidence } = found;
  const first = chosen.parts[0];
  const tone = first?.when === "now" ? "fails" : first?.when === "later" ? "thin" : "holds";
  return (
    <div aria-busy={busy}>
      <p className={styles.serif}>
        <VerdictMark verdict={tone} size={18} /> <span>{sentence(first, chosen.date, chosen.horizon, factor)}</span>
      </p>
      <p className={styles.note}>
        At the present rate of use, for {formatPercent(confidence)} of such parts. For 99 % of them: {whenWords(strict)}
        . For half of them: {whenWords(central)}.{old && " The loads are from before the last change to the rig."}
      </p>
      <ul className={styles.parts}>
        {chosen.parts
          .filter(({ when }) => when !== "beyond")
          .map((part) => (
            <Part key={part.id} part={part} horizon={chosen.horizon} />
          ))}
      </ul>
      {chosen.parts.some(({ when }) => when === "beyond") && (
        <Disclosure
          level={4}
          title={`${chosen.parts.filter(({ when }) => when === "beyond").length} parts last beyond ${dateWords(chosen.horizon)}`}
        >
          <ul className={styles.parts}>
            {chosen.parts
              .filter(({ when }) => when === "beyond")
              .map((part) => (
                <Part key={part.id} part={part} horizon={chosen.horizon} />
              ))}
          </ul>
        </Disclosure>
      )}
    </div>
  );
}

function sentence(first: PartTakeDown | undefined, date: string | undefined, horizon: string, factor: number): string {
  if (!first) return "The study gave no loads to go by.";
  if (first.when === "now") return `Take it down: ${first.name} no longer has the factor of ${factor}.`;
  if (first.when === "later")
    return `Take it down by ${dateWords(date ?? "")}: then ${first.name} no longer has the factor of ${factor}.`;
  return `Every part keeps the factor of ${factor} until ${dateWords(horizon)} at least, the last day looked at.`;
}

function whenWords({ parts, date, horizon }: TakeDown): string {
  if (date === undefined) return `beyond ${dateWords(horizon)}`;
  return parts[0]?.when === "now" ? "overdue" : `by ${dateWords(date)}`;
}

function Part({ part, horizon }: { part: PartTakeDown; horizon: string }) {
  const tone = part.when === "now" ? "fails" : part.when === "later" ? "thin" : "holds";
  return (
    <li>
      <p className={styles.partName}>
        <VerdictMark verdict={tone} size={14} /> {part.name}
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
