import { tellFault } from "@secondline/words/faults";
import { isInGroup } from "@secondline/workbench";
import { useShallow } from "zustand/react/shallow";
import { useSandbox } from "../state/useSandbox.ts";

/** Messages of the faults at exactly this path. */
export function useFaultsAt(path: string): readonly string[] {
  return useSandbox(
    useShallow((state) =>
      state.document.issues.filter((issue) => issue.path === path).map(({ message }) => tellFault(message)),
    ),
  );
}

/** How many faults lie in any of these groups. */
export function useFaultCount(groups: readonly string[]): number {
  return useSandbox(
    (state) => state.document.issues.filter((issue) => groups.some((group) => isInGroup(issue.path, group))).length,
  );
}
