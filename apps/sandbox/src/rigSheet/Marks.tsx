import { marksIn } from "@secondline/rig";
import { newRigWords } from "@secondline/words/newRig";
import { addPart, confirmValues, marksInGroups, type NewPart } from "@secondline/workbench";
import { useShallow } from "zustand/react/shallow";
import { Button } from "../design/Button.tsx";
import { useActions, useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import styles from "./Marks.module.css";

const { say } = newRigWords;

/** Marks in any of these groups; all marks if no group is named. */
function useMarksIn(groups?: readonly string[]): readonly string[] {
  return useSandbox(useShallow(({ document }) => marksInGroups(document.history.present.rig, groups)));
}

/** Words for a field whose value nobody has confirmed; undefined for all others. */
export function useMark(path: string): string | undefined {
  const marked = useSandbox(({ document }) => marksIn(document.history.present.rig).includes(path));
  return marked ? say("sheet.open") : undefined;
}

function useConfirm(): (paths: readonly string[]) => void {
  const sandbox = useContextOrThrow();
  const { announce } = useActions();
  return (paths) => {
    const count = confirmValues(sandbox, paths, say("sheet.step"));
    announce(count === 0 ? say("state.none") : say("state.good", { count }));
  };
}

/** Puts in a new part: its values are nobody's until somebody has looked at them. */
export function useAddPart(): (part: NewPart) => void {
  const sandbox = useContextOrThrow();
  return (part) => addPart(sandbox, part);
}

/** Under a field: nobody has confirmed its value, and the way to do that. `named`: there is no field above that says what it is. */
export function ConfirmOne({ path, name, named = false }: { path: string; name: string; named?: boolean }) {
  const mark = useMark(path);
  const confirm = useConfirm();
  if (mark === undefined) return null;
  return (
    <p className={styles.one}>
      <span>{named ? say("sheet.openOf", { name }) : mark}</span>
      <button
        type="button"
        className={styles.confirm}
        aria-label={say("sheet.confirm", { name })}
        onClick={() => confirm([path])}
      >
        {say("sheet.confirmShort")}
      </button>
    </p>
  );
}

/** Confirms whatever is marked in these groups. */
export function ConfirmAll({ groups }: { groups: readonly string[] }) {
  const marks = useMarksIn(groups);
  const confirm = useConfirm();
  if (marks.length < 2) return null;
  return <Button label={say("sheet.confirmAll", { count: marks.length })} onClick={() => confirm(marks)} />;
}

/** A heading with the number of values beneath it that nobody has confirmed. */
export function MarkedTitle({ title, groups }: { title: string; groups: readonly string[] }) {
  const { length: count } = useMarksIn(groups);
  return (
    <>
      {title}
      {count > 0 && <span className={styles.count}>{say("sheet.count", { count })}</span>}
    </>
  );
}

/** The number of all marks; shows nothing if there is no mark. */
export function MarksState() {
  const { length: count } = useMarksIn();
  return count === 0 ? null : <p className={styles.state}>{say("state.good", { count })}</p>;
}
