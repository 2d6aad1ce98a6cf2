import { useEffect } from "react";
import type { FileActions } from "../files/useFileActions.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";

/** Undo, redo, save and open by their usual keys. Text being typed keeps its own undo, and so do other views. */
export function useKeys({ save, chooseFile }: FileActions): void {
  const { undo, redo } = useActions();
  const ownUndo = useSandbox((state) => state.session.view !== "rig");
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const typing = event.target instanceof HTMLInputElement && event.target.type !== "range";
      const key = event.key.toLowerCase();
      const act =
        key === "s"
          ? save
          : key === "o"
            ? chooseFile
            : typing || ownUndo
              ? undefined
              : key === "y" || (key === "z" && event.shiftKey)
                ? redo
                : key === "z"
                  ? undo
                  : undefined;
      if (!act) return;
      event.preventDefault();
      act();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [undo, redo, save, chooseFile, ownUndo]);
}
