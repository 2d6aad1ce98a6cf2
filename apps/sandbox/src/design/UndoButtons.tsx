import { sayPage } from "@secondline/words/page/page";
import { Button } from "./Button.tsx";

interface Props {
  /** What would be undone and redone; undefined: nothing. */
  undoable: string | undefined;
  redoable: string | undefined;
  onUndo: () => void;
  onRedo: () => void;
}

/** Undo and redo, each named for what it would take back or bring back. */
export function UndoButtons({ undoable, redoable, onUndo, onRedo }: Props) {
  return (
    <>
      <Button
        tone="quiet"
        icon="undo"
        iconOnly
        label={undoable ? sayPage("undoButtons.undo", { undoable }) : sayPage("undoButtons.nothingUndoHere")}
        disabled={!undoable}
        onClick={onUndo}
      />
      <Button
        tone="quiet"
        icon="redo"
        iconOnly
        label={redoable ? sayPage("undoButtons.redo", { redoable }) : sayPage("undoButtons.nothingRedoHere")}
        disabled={!redoable}
        onClick={onRedo}
      />
    </>
  );
}
