import type { FileActions } from "../files/useFileActions.ts";
import { usePageKeys } from "../state/usePageKeys.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";

/** Undo, redo, save and open by their usual keys. Other views have an undo of their own. */
export function useKeys({ save, chooseFile: open }: FileActions): void {
  const { undo, redo } = useActions();
  const isOwn = useSandbox((state) => state.session.view !== "rig");
  usePageKeys(isOwn ? { save, open } : { save, open, undo, redo });
}
