import { sayRecord } from "@secondline/words/page/record";
import { entriesOf, type GrippedPart as GripEnd, movePlace, placeOf, replaceEntry } from "@secondline/workbench";
import { following } from "@secondline/workbench/record";
import { useRef } from "react";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import type { Along } from "./useAlong.ts";

/** Moves the chosen entry along the webbing; a drag is one step of undo. What goes out of sight is followed. */
export function useMovedEntry({ sight, length, whole, set }: Along) {
  const written = useWear((wear) => wear.work.record);
  const owner = useWear((wear) => wear.owner);
  const { edit, finish, look } = useWearActions();
  const start = useRef<{ readonly record: typeof written; readonly entry: number }>(undefined);
  return {
    begin(entry: number) {
      finish();
      start.current = { record: written, entry };
      look({ entry });
    },
    by(metres: number, end: GripEnd) {
      if (!start.current) return;
      const { record, entry } = start.current;
      const before = entriesOf(record, owner)[entry];
      if (!before) return;
      const after = movePlace(before, metres, length, end);
      edit(replaceEntry(record, owner, entry, after).record, sayRecord("useMovedEntry.step"), `move ${entry}`);
      const place = placeOf(after);
      if (place && !whole) set(following(sight, place, length));
    },
    end: finish,
  };
}
