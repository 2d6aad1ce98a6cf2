/** What the results of a teardown taught so far. Knows no store: what it rests on is handed on. */

import type { TeardownLearnt } from "@secondline/strength";
import { quantity } from "@secondline/words";
import { dayText } from "@secondline/words/dates";
import { englishTeardownWords as teardownWords } from "@secondline/words/teardown";
import type { LearntInput } from "@secondline/workbench";
import { Table } from "../design/Table.tsx";
import styles from "./teardown.module.css";
import { useLearnt } from "./usePlan.ts";

const { say } = teardownWords;

export function LearntPart({ input }: { input: LearntInput }) {
  const answer = useLearnt(input);
  return (
    <section className={styles.learnt} aria-label={say("teardown.learnt.short")}>
      <h3>{say("teardown.learnt.short")}</h3>
      {(answer.kind === "idle" || answer.kind === "busy") && <p role="status">{say("teardown.learnt.busy")}</p>}
      {answer.kind === "failed" && <p role="alert">✕ {answer.message}</p>}
      {answer.kind === "done" && <Found input={input} found={answer.value} />}
    </section>
  );
}

function Found({ input: { rig }, found }: { input: LearntInput; found: TeardownLearnt }) {
  const { counted, results, contradictions, factors, parts, on, share } = found;
  const factorRows = factors.map((one) => {
    const { what, tests, before, after } = teardownWords.factorLearnt(one);
    return [what, tests, before, after];
  });
  const partRows = parts.map((one) => {
    const { part, before, after, change, until, daysBefore, daysAfter } = teardownWords.partLearnt(rig, one, found);
    return [part, before, after, change, until, daysBefore, daysAfter];
  });
  return (
    <>
      <p>{say("teardown.learnt.counted", { counted, results })}</p>
      {contradictions.length === 0 ? (
        <p>{say("teardown.learnt.agrees")}</p>
      ) : (
        <ul className={styles.list}>
          {contradictions.map((one) => (
            <li key={`${one.stock} ${one.state}`}>▲ {teardownWords.contradiction(one)}</li>
          ))}
        </ul>
      )}
      {factorRows.length > 0 && (
        <Table
          isNamed
          className={styles.table}
          label={say("teardown.learnt.factor")}
          rows={factorRows}
          heads={(["factor", "tests", "before", "after"] as const).map((name) => say(`teardown.learnt.${name}`))}
        />
      )}
      {partRows.length > 0 && (
        <>
          <Table
            isNamed
            className={styles.table}
            label={say("teardown.learnt.part", { on: dayText(on) })}
            rows={partRows}
            heads={[
              say("teardown.learnt.part", { on: dayText(on) }),
              ...(["held", "holds", "change", "until", "daysBefore", "daysAfter"] as const).map((name) =>
                say(`teardown.learnt.${name}`),
              ),
            ]}
          />
          <p className={styles.soft}>
            {say("teardown.learnt.nextCaption", { on: dayText(on), share: quantity.percent(share) })}
          </p>
        </>
      )}
    </>
  );
}
