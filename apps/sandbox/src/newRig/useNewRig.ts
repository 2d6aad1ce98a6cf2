import { newRigWords } from "@secondline/words/newRig";
import {
  type AnswerId,
  type Answers,
  closeGroup,
  keepAnswers,
  keptAnswers,
  type NewRig,
  type QuestionId,
  record,
  rigFrom,
  type Side,
  type SideHost,
  sideOf,
  startHistory,
  undo,
  withAnswer,
  withDrawnConnections,
  withDrawnGround,
} from "@secondline/workbench";
import { useMemo, useRef, useState } from "react";
import { deviceShelf } from "../device/shelf.ts";
import { useActions } from "../state/useSandbox.ts";

export interface NewRigDesk {
  readonly answers: Answers;
  readonly made: NewRig;
  /** An empty text takes the answer back: the template's value stands again. */
  readonly answer: (id: AnswerId, text: string) => void;
  readonly confirm: (question: QuestionId, right: boolean) => void;
  readonly change: (answers: Answers) => void;
  readonly reset: () => void;
  /** The rig from the side, as far as the answers say it; undefined while they cannot be read. */
  readonly side: Side | undefined;
  readonly host: SideHost;
  /** Takes the last move in the sketch back; undefined where there is none, or something else was answered since. */
  readonly undo: (() => void) | undefined;
}

/** Steps back are moves in the sketch; what is answered otherwise begins anew. */
const begun = (answers: Answers) => startHistory({ answers });

/** The answers so far and the rig that follows; kept on this device with every change. */
export function useNewRig(): NewRigDesk {
  const { tell } = useActions();
  const [moves, setMoves] = useState(() => begun(keptAnswers(deviceShelf())));
  const { answers } = moves.present;
  const told = useRef(false);
  const made = useMemo(() => rigFrom(answers), [answers]);
  const side = useMemo(() => sideOf(made.document), [made]);

  const change = (next: Answers) => put(begun(next));
  function put(next: typeof moves): void {
    setMoves(next);
    try {
      keepAnswers(deviceShelf(), next.present.answers);
      told.current = false;
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      // Told once, not with every letter.
      if (!told.current) tell({ tone: "fault", text: newRigWords.say("notKept", { message }) });
      told.current = true;
    }
  }
  function answer(id: AnswerId, text: string): void {
    change(withAnswer(answers, id, text));
  }
  function draw(next: Answers, group: string): void {
    put(record(moves, "", { answers: next }, group === "" ? undefined : group));
  }
  const takeBack = () => put(undo(moves));
  const canUndo = moves.past.length > 0;
  const host: SideHost = {
    ground: (points, _, group) => draw(withDrawnGround(answers, points), group),
    connection: (metres, _, group) => draw(withDrawnConnections(answers, metres), group),
    takeBack(group) {
      if (moves.openGroup !== group || !canUndo) return false;
      takeBack();
      return true;
    },
    done: () => setMoves(closeGroup),
  };
  function confirm(question: QuestionId, right: boolean): void {
    const others = (answers.confirmed ?? []).filter((one) => one !== question);
    change({ ...answers, confirmed: right ? [...others, question] : others });
  }
  const reset = () => change({});
  return { answers, made, answer, confirm, change, reset, side, host, undo: canUndo ? takeBack : undefined };
}
