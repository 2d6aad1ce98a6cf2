import { type BreakTest, testFields } from "@secondline/strength";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { todayIso } from "@secondline/workbench";
import { draftOf, freshTest, nextTest, readDraft, type TestDraft } from "@secondline/workbench/record";
import { type FormEvent, type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from "react";
import { Button } from "../design/Button.tsx";
import { useActions } from "../state/useSandbox.ts";
import { useWearActions } from "../wearInHand/useWear.ts";
import { onEscape } from "./leaveKey.ts";
import { TestFields } from "./TestFields.tsx";
import styles from "./wear.module.css";

interface FormProps {
  draft: TestDraft;
  onDraft: (draft: TestDraft) => void;
  /** Every field is right. */
  onTest: (test: BreakTest) => void;
  /** What did not happen while one is wrong. */
  refused: string;
  label?: string;
  isFocused?: boolean;
  onKeyDown?: (event: KeyboardEvent) => void;
  children: ReactNode;
}

/** Tells how many fields are wrong and goes to the first wrong field, once it is marked. */
function Form({ draft, onDraft, onTest, refused, label, isFocused = false, onKeyDown, children }: FormProps) {
  const { announce } = useActions();
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (isFocused) form.current?.querySelector("input")?.focus();
  }, [isFocused]);
  function submit(event: FormEvent): void {
    event.preventDefault();
    const { test, faults } = readDraft(draft);
    if (test) {
      onTest(test);
      return;
    }
    onDraft({ ...draft, touched: "all" });
    announce(sayBreakLog("testForm.refused", { refused, faults: faults.length }));
    requestAnimationFrame(() => form.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus());
  }
  return (
    <form ref={form} className={styles.testForm} aria-label={label} noValidate onSubmit={submit} onKeyDown={onKeyDown}>
      <TestFields {...{ draft, onDraft }} />
      <div className={styles.buttons}>{children}</div>
    </form>
  );
}

/** One test typed in; nothing goes into the log until every field is right. */
export function TestForm() {
  const [draft, setDraft] = useState(() => draftOf(freshTest(todayIso())));
  const { addTest } = useWearActions();
  const { announce } = useActions();
  function add(test: BreakTest): void {
    addTest(test);
    setDraft(draftOf(nextTest(draft.fields)));
    announce(sayBreakLog("testForm.added"));
  }
  return (
    <Form draft={draft} onDraft={setDraft} onTest={add} refused={sayBreakLog("testForm.notAdded")}>
      <Button tone="filled" label={sayBreakLog("testForm.add")} type="submit" />
    </Form>
  );
}

interface ChangeProps {
  test: BreakTest;
  onKeep: (test: BreakTest) => void;
  onLeave: () => void;
}

/** A test of the log in its fields. The log keeps the old test until all fields are right and the user keeps them. */
export function TestChange({ test, onKeep, onLeave }: ChangeProps) {
  const [draft, setDraft] = useState(() => draftOf(testFields(test)));
  return (
    <Form
      draft={draft}
      onDraft={setDraft}
      onTest={onKeep}
      refused={sayBreakLog("testForm.notKept")}
      label={sayBreakLog("testForm.changeTest")}
      isFocused
      onKeyDown={onEscape(onLeave)}
    >
      <Button tone="filled" label={sayBreakLog("testForm.keepChange")} type="submit" />
      <Button tone="quiet" label={sayBreakLog("testForm.leaveAsItWas")} onClick={onLeave} />
    </Form>
  );
}
