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
        label={undoable ? `Undo: ${undoable}` : "Nothing to undo here"}
        disabled={!undoable}
        onClick={onUndo}
      />
      <Button
        tone="quiet"
        icon="redo"
        iconOnly
        label={redoable ? `Redo: ${redoable}` : "Nothing to redo here"}
        disabled={!redoable}
        onClick={onRedo}
      />
    </>
  );
}
