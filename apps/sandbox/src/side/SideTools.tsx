import { newRigWords } from "@secondline/words/newRig";
import { faultWords, MOST_HANDLES } from "@secondline/workbench";
import { Button } from "../design/Button.tsx";
import styles from "./side.module.css";
import type { SideInHand } from "./useSideDesk.ts";

const { say } = newRigWords;

/** Buttons for what a hand cannot do in the drawing, and their messages. `onUndo`: for a page that has no undo of its own. */
export function SideTools({ desk, onUndo }: { desk: SideInHand; onUndo?: (() => void) | undefined }) {
  const { chosen, shown, fault } = desk;
  const point = chosen?.kind === "ground" ? chosen.index : undefined;
  const count = shown.points.length;
  if (count > MOST_HANDLES) return <p className={styles.told}>{say("side.many", { count })}</p>;
  return (
    <div className={styles.tools}>
      <p className={styles.help}>{say("side.help")}</p>
      <div className={styles.buttons}>
        <Button icon="plus" label={say("side.add")} onClick={() => desk.add()} />
        <Button
          icon="bin"
          label={point === undefined ? say("side.removeAny") : say("side.remove", { number: point + 1 })}
          disabled={point === undefined || !desk.canRemove(point)}
          onClick={() => point !== undefined && desk.remove(point)}
        />
        {onUndo && <Button icon="undo" label={say("side.undo")} onClick={onUndo} />}
      </div>
      <p className={fault && desk.told === "" ? styles.wrongText : styles.told} role="status">
        {desk.told !== "" ? desk.told : fault ? faultWords(fault) : ""}
      </p>
    </div>
  );
}
