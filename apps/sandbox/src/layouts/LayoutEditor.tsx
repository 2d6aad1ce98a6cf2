import { sayLayouts } from "@secondline/words/page/layouts";
import { useEffect, useRef } from "react";
import { Button } from "../design/Button.tsx";
import { UndoButtons } from "../design/UndoButtons.tsx";
import { RigSheet } from "../rigSheet/RigSheet.tsx";
import { SandboxContext, useActions, useSandbox } from "../state/useSandbox.ts";
import styles from "./LayoutsView.module.css";
import type { Layout } from "./layouts.ts";

interface Props {
  layout: Layout;
  letter: string;
  wide: boolean;
  onClose: () => void;
}

/** The rig sheet of one layout, with its own undo. */
export function LayoutEditor({ layout, letter, wide, onClose }: Props) {
  const heading = useRef<HTMLParagraphElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <SandboxContext.Provider value={layout.sandbox}>
      <section className={styles.editorInner} aria-label={sayLayouts("layoutEditor.rigSheetLayout", { letter })}>
        <div className={styles.editorHead}>
          <p ref={heading} className={styles.editorTitle} tabIndex={-1}>
            {sayLayouts("layoutEditor.changingLayout", { letter })}
          </p>
          <LayoutUndo />
          <Button tone={wide ? "plain" : "filled"} label={sayLayouts("layoutEditor.done")} onClick={onClose} />
        </div>
        <div className={styles.editorSheet}>
          <RigSheet />
        </div>
      </section>
    </SandboxContext.Provider>
  );
}

/** Undo and redo of the layout around it. */
function LayoutUndo() {
  const undoable = useSandbox((state) => state.document.history.past.at(-1)?.label);
  const redoable = useSandbox((state) => state.document.history.future[0]?.label);
  const { undo, redo } = useActions();
  return <UndoButtons undoable={undoable} redoable={redoable} onUndo={undo} onRedo={redo} />;
}
