import { type BreakTest, type TestFields as Fields, testFields } from "@secondline/strength";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { todayIso } from "@secondline/workbench";
import { type FormEvent, useEffect, useRef } from "react";
import { Button } from "../design/Button.tsx";
import { useActions } from "../state/useSandbox.ts";
import { useWearActions } from "../wearInHand/useWear.ts";
import { onEscape } from "./leaveKey.ts";
import { TestFields } from "./TestFields.tsx";
import { type TestDraft, useTestDraft } from "./useTestDraft.ts";
import styles from "./wear.module.css";

const fresh = (): Fields => ({
  date: todayIso(),
  part: "webbing",
  material: "",
  state: "",
  wet: "dry",
  outcome: "broke",
  unit: "kN",
});

/** One test typed in; nothing goes into the log until every field is right. */
export function TestForm() {
  const draft = useTestDraft(fresh);
  const { addTest } = useWearActions();
  const { announce } = useActions();
  const form = useRef<HTMLFormElement>(null);
  function add(event: FormEvent): void {
    event.preventDefault();
    const test = draft.read();
    if (!test) {
      refuse(sayBreakLog("testForm.notAdded"), draft, form.current, announce);
      return;
    }
    addTest(test);
    // The next sample is most often of the same kind: only what was measured is asked again.
    const { result: _result, result_to: _to, note: _note, ...same } = draft.fields;
    draft.reset(same);
    announce(sayBreakLog("testForm.added"));
  }
  return (
    <form ref={form} className={styles.testForm} noValidate onSubmit={add}>
      <TestFields draft={draft} />
      <div className={styles.buttons}>
        <Button tone="filled" label={sayBreakLog("testForm.add")} type="submit" />
      </div>
    </form>
  );
}

interface ChangeProps {
  test: BreakTest;
  onKeep: (test: BreakTest) => void;
  onLeave: () => void;
}

/** A test of the log in its fields; the log keeps the test as it was until all of them are right and kept. */
export function TestChange({ test, onKeep, onLeave }: ChangeProps) {
  const draft = useTestDraft(() => testFields(test));
  const { announce } = useActions();
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector("input")?.focus(), []);
  function keep(event: FormEvent): void {
    event.preventDefault();
    const changed = draft.read();
    if (changed) onKeep(changed);
    else refuse(sayBreakLog("testForm.notKept"), draft, form.current, announce);
  }
  return (
    <form
      ref={form}
      className={styles.testForm}
      aria-label={sayBreakLog("testForm.changeTest")}
      noValidate
      onSubmit={keep}
      onKeyDown={onEscape(onLeave)}
    >
      <TestFields draft={draft} />
      <div className={styles.buttons}>
        <Button tone="filled" label={sayBreakLog("testForm.keepChange")} type="submit" />
        <Button tone="quiet" label={sayBreakLog("testForm.leaveAsItWas")} onClick={onLeave} />
      </div>
    </form>
  );
}

/** Tells how many fields are wrong and goes to the first of them, once it is marked. */
function refuse(outcome: string, { faults }: TestDraft, form: HTMLFormElement | null, say: (text: string) => void) {
  say(`${outcome}: ${sayBreakLog("testForm.fields", { faults })} to put right.`);
  requestAnimationFrame(() => form?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus());
}
