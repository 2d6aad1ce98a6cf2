import { type DocumentName, type Documents, documentNameOf, documentsOf, type Step } from "@secondline/workbench";
import { words } from "../words.ts";
import { useActions, useSandbox } from "./useSandbox.ts";

/** What would be undone and redone; a step of a document that is not in view says which one it belongs to. */
export function useUndo(inView: (name: DocumentName) => boolean) {
  const { undo, redo } = useActions();
  const last = useSandbox((state) => state.document.history.past.at(-1));
  const next = useSandbox((state) => state.document.history.future[0]);
  const label = (step: Step<Documents> | undefined) => {
    if (!step) return undefined;
    const name = documentNameOf(documentsOf(step));
    return inView(name) ? step.label : words.say(`step.${name}`, { step: step.label });
  };
  return { undoable: label(last), redoable: label(next), onUndo: undo, onRedo: redo };
}

export const isRig = (name: DocumentName): boolean => name === "rig";
