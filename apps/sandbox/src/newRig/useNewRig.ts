import { newRigWords } from "@secondline/words/newRig";
import {
  type Answers,
  createNewRigDesk,
  type NewRig,
  type NewRigDesk,
  rigFrom,
  type SideView,
  sideOf,
} from "@secondline/workbench";
import { useMemo, useState } from "react";
import { useStore } from "zustand";
import { deviceShelf } from "../device/shelf.ts";
import { useActions } from "../state/useSandbox.ts";

export interface NewRigInHand extends Omit<NewRigDesk, "store" | "takeBack"> {
  readonly answers: Answers;
  readonly made: NewRig;
  /** The rig from the side, as far as the answers say it; undefined while they cannot be read. */
  readonly side: SideView | undefined;
  /** Takes the last move in the sketch back; undefined if nothing was moved, or something else was answered since. */
  readonly undo: (() => void) | undefined;
}

/** The answers so far and the rig that follows; kept on this device with every change. */
export function useNewRig(): NewRigInHand {
  const { tell } = useActions();
  const [desk] = useState(() =>
    createNewRigDesk({
      shelf: deviceShelf,
      onTrouble(error) {
        const message = error instanceof Error ? error.message : String(error);
        tell({ tone: "fault", text: newRigWords.say("notKept", { message }) });
      },
    }),
  );
  const { moves } = useStore(desk.store);
  const { answers } = moves.present;
  const made = useMemo(() => rigFrom(answers), [answers]);
  const side = useMemo(() => sideOf(made.document), [made]);
  return { ...desk, answers, made, side, undo: moves.past.length > 0 ? desk.takeBack : undefined };
}
