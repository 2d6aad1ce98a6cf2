import { type PageKey, pageKey } from "@secondline/workbench";
import { useEffect } from "react";

type Acts = Readonly<Partial<Record<PageKey, () => void>>>;

/**
 * Documents by their usual keys; what is not named is left to the browser. Text being typed keeps its own undo. `first`: before others
 * that listen for the same keys, and instead of them.
 */
export function usePageKeys({ save, open, undo, redo }: Acts, first = false): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const key = pageKey(event);
      if (!key) return;
      if (first) event.stopImmediatePropagation();
      const typing = event.target instanceof HTMLInputElement && event.target.type !== "range";
      const act = typing && (key === "undo" || key === "redo") ? undefined : { save, open, undo, redo }[key];
      if (!act) return;
      event.preventDefault();
      act();
    };
    addEventListener("keydown", onKey, first);
    return () => removeEventListener("keydown", onKey, first);
  }, [save, open, undo, redo, first]);
}
