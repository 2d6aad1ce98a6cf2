/** The teardown of the open rig's line on the day that is shown: what to cut, the sheet to print, and results that become the break log. */
import type { Rig } from "@secondline/rig";
import { type BreakTest, DEFAULT_PULLS, type Teardown } from "@secondline/strength";
import { sayTeardown } from "@secondline/words/page/teardown";
import { englishTeardownWords as teardownWords } from "@secondline/words/teardown";
import { isResult } from "@secondline/workbench";
import { useMemo, useRef, useState } from "react";
import { Lines } from "../design/Lines.tsx";
import { useSandbox } from "../state/useSandbox.ts";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { LearntPart } from "./LearntPart.tsx";
import { PlanPart } from "./PlanPart.tsx";
import { printSheet } from "./printSheet.ts";
import styles from "./teardown.module.css";
import { usePlan } from "./usePlan.ts";

const PULLS = [4, 6, 8, 10, DEFAULT_PULLS, 16, 20, 24] as const;

export function TeardownPage() {
  const rig = useSandbox((state) => state.document.rig);
  const record = useWear((state) => state.good.written);
  const on = useWear((state) => state.on);
  const tests = useWear((state) => state.work.log.tests);
  const [pulls, setPulls] = useState<number>(DEFAULT_PULLS);
  const { addTest } = useWearActions();
  const learnt = useRef<HTMLDivElement>(null);
  // The results of this very day come out of the plan: with them it would change under the hands.
  const known = JSON.stringify(tests.filter((test) => !isResult(test, on)));
  const pulled = JSON.stringify(tests.filter((test) => isResult(test, on)));
  const results = useMemo(() => JSON.parse(pulled) as BreakTest[], [pulled]);
  const input = useMemo(() => ({ rig, record, on, pulls, tests: JSON.parse(known) }), [rig, record, on, pulls, known]);
  const asked = useMemo(() => ({ rig, record, on, before: input.tests, results }), [rig, record, on, input, results]);
  const answer = usePlan(input);
  const plan = answer.kind === "done" && answer.value.ok ? answer.value.teardown : undefined;
  return (
    <div className={styles.page}>
      <div className={styles.bar}>
        <label className={styles.field}>
          {sayTeardown("teardownPage.pulls")}
          <select value={pulls} onChange={(event) => setPulls(Number(event.target.value))}>
            {PULLS.map((count) => (
              <option key={count}>{count}</option>
            ))}
          </select>
        </label>
        {plan && <PrintButton rig={rig} plan={plan} />}
        {plan && results.length > 0 && (
          <button type="button" className={styles.button} onClick={() => learnt.current?.scrollIntoView()}>
            {teardownWords.say("teardown.learnt.go", { count: results.length })}
          </button>
        )}
      </div>
      {(answer.kind === "idle" || answer.kind === "busy") && (
        <p role="status">{sayTeardown("teardownPage.computing")}</p>
      )}
      {answer.kind === "failed" && (
        <p role="alert">{sayTeardown("teardownPage.noPlan", { message: answer.message })}</p>
      )}
      {answer.kind === "done" && !answer.value.ok && (
        <Lines className={styles.list} role="alert" of={teardownWords.teardownIssue(rig, on, answer.value.issue)} />
      )}
      {plan && <PlanPart {...{ rig, plan, tests }} onResult={addTest} />}
      {/* Last, so that no field moves away under the finger when the first result makes it come. */}
      <div ref={learnt}>{plan && results.length > 0 && <LearntPart input={asked} />}</div>
    </div>
  );
}

function PrintButton({ rig, plan }: { rig: Rig; plan: Teardown }) {
  return (
    <button type="button" className={styles.button} onClick={() => printSheet(rig, plan)}>
      {sayTeardown("teardownPage.printSheet")}
    </button>
  );
}
