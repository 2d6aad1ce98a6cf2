import {
  type Answers,
  createNewRigDesk,
  type NewRig,
  type NewRigDesk,
  type NewRigState,
  rigFrom,
  type SideView,
  sideOf,
  wasReplaced,
} from "@secondline/workbench";
import { useMemo, useState } from "react";
import { useStore } from "zustand";
import { deviceShelf } from "../device/shelf.ts";

export interface NewRigInHand extends Omit<NewRigDesk, "store" | "takeBack"> {
  readonly answers: Answers;
  readonly unkept: NewRigState["unkept"];
  readonly made: NewRig;
  /** The rig from the side, as far as the answers say it; undefined while they cannot be read. */
  readonly side: SideView | undefined;
  /** Takes the last move in the sketch back; undefined if nothing was moved, or something else was answered since. */
  readonly undo: (() => void) | undefined;
  /** Brings back the answers in whose place others were put; undefined if there are none. */
  readonly bringBack: (() => void) | undefined;
}

/** The answers so far and the rig that follows; kept on this device with every change. */
export function useNewRig(): NewRigInHand {
  const [desk] = useState(() => createNewRigDesk({ shelf: deviceShelf }));
  const { moves, unkept } = useStore(desk.store);
  const { answers } = moves.present;
  const made = useMemo(() => rigFrom(answers), [answers]);
  const side = useMemo(() => sideOf(made.document), [made]);
  const last = moves.past.length === 0 ? undefined : wasReplaced(moves) ? "replacement" : "move";
  const back = (what: "move" | "replacement") => (last === what ? desk.takeBack : undefined);
  return { ...desk, answers, unkept, made, side, undo: back("move"), bringBack: back("replacement") };
}
