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
      <section className={styles.editorInner} aria-label={`Rig sheet of layout ${letter}`}>
        <div className={styles.editorHead}>
          <p ref={heading} className={styles.editorTitle} tabIndex={-1}>
            Changing layout {letter}
          </p>
          <LayoutUndo />
          <Button tone={wide ? "plain" : "filled"} label="Done" onClick={onClose} />
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
