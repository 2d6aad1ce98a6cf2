import type { BreakTest } from "@secondline/strength";
import { formatForce } from "@secondline/words/formats";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { resultWords } from "@secondline/workbench";
import { testLine } from "@secondline/workbench/record";
import { useEffect, useRef, useState } from "react";
import { Button } from "../design/Button.tsx";
import { Disclosure } from "../design/Disclosure.tsx";
import { useActions } from "../state/useSandbox.ts";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { TestChange } from "./TestForm.tsx";
import styles from "./wear.module.css";

/** The tests of a group, row by row; each opens as a form in its place. */
export function TestTable({ tests }: { tests: readonly BreakTest[] }) {
  const all = useWear((state) => state.work.log.tests);
  const chosen = useWear((state) => state.test);
  const [open, setOpen] = useState(false);
  const here = chosen !== undefined && tests.some((test) => test === all[chosen.index]);
  const { look, changeTest, removeTest } = useWearActions();
  const { announce } = useActions();
  // A test that was changed into one of this group comes into sight here.
  useEffect(() => {
    if (here) setOpen(true);
  }, [here]);

  function keep(index: number, test: BreakTest): void {
    changeTest(index, test);
    look({ test: { index, editing: false } });
    announce(sayBreakLog("testTable.changedNotice", { resultWords: resultWords(test, formatForce) }));
  }
  function remove(place: number): void {
    const index = all.indexOf(tests[place]!);
    const next = tests[place + 1] ?? tests[place - 1];
    removeTest(index);
    const at = next ? all.toSpliced(index, 1).indexOf(next) : -1;
    if (at >= 0) look({ test: { index: at, editing: false } });
    announce(sayBreakLog("testTable.removedNotice"));
  }
  return (
    <Disclosure
      level={4}
      title={sayBreakLog("testTable.tests", { count: tests.length })}
      open={open}
      onOpenChange={(next) => {
        setOpen(next);
        if (!next && here) look({ test: undefined });
      }}
    >
      <ul className={styles.testList}>
        {tests.map((test, place) => {
          const index = all.indexOf(test);
          const own = chosen?.index === index ? chosen : undefined;
          return (
            <li key={index} className={own?.editing ? styles.chosenTest : ""}>
              <Row
                test={test}
                editing={own?.editing === true}
                focused={own?.editing === false}
                onOpen={(editing) => look({ test: { index, editing } })}
                onRemove={() => remove(place)}
              />
              {own?.editing && (
                <TestChange
                  test={test}
                  onKeep={(changed) => keep(index, changed)}
                  onLeave={() => look({ test: { index, editing: false } })}
                />
              )}
            </li>
          );
        })}
      </ul>
    </Disclosure>
  );
}

interface RowProps {
  test: BreakTest;
  editing: boolean;
  /** The keyboard goes on from here: its form was closed just now. */
  focused: boolean;
  onOpen: (editing: boolean) => void;
  onRemove: () => void;
}

function Row({ test, editing, focused, onOpen, onRemove }: RowProps) {
  const row = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (focused) row.current?.focus();
  }, [focused]);
  return (
    <div className={styles.testRow}>
      <button
        ref={row}
        type="button"
        className={styles.testWords}
        aria-expanded={editing}
        onClick={() => onOpen(!editing)}
      >
        {testLine(test)}
      </button>
      <Button
        tone="quiet"
        icon="bin"
        iconOnly
        label={sayBreakLog("testTable.removeTest", { resultWords: resultWords(test, formatForce) })}
        onClick={onRemove}
      />
    </div>
  );
}
