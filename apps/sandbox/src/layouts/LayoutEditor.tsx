import { sayLayouts } from "@secondline/words/page/layouts";
import type { Layout } from "@secondline/workbench";
import { useEffect, useRef } from "react";
import { Button } from "../design/Button.tsx";
import { UndoButtons } from "../design/UndoButtons.tsx";
import { RigSheet } from "../rigSheet/RigSheet.tsx";
import { SandboxContext } from "../state/useSandbox.ts";
import { isRig, useUndo } from "../state/useUndo.ts";
import styles from "./LayoutsView.module.css";

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
  return <UndoButtons {...useUndo(isRig)} />;
}
