import { newRigWords } from "@secondline/words/newRig";
import {
  type AnswerId,
  type Answers,
  type NewRig,
  type QuestionId,
  rigFrom,
  type Side,
  sideOf,
  withAnswer,
  withDrawnConnections,
  withDrawnGround,
} from "@secondline/workbench";
import { useMemo, useRef, useState } from "react";
import type { SideHost } from "../side/sideDesk.ts";
import { deviceShelf } from "../state/shelf.ts";
import { useActions } from "../state/useSandbox.ts";
import { keepAnswers, keptAnswers } from "./keptAnswers.ts";

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

/** The answers before each move in the sketch; moves of one group are one. */
interface Moves {
  readonly before: readonly Answers[];
  readonly group: string | undefined;
}
const NO_MOVES: Moves = { before: [], group: undefined };
/** More moves than anybody takes back; the oldest go first. */
const DEPTH = 100;

/** The answers so far and the rig that follows; kept on this device with every change. */
export function useNewRig(): NewRigDesk {
  const { tell } = useActions();
  const [answers, setAnswers] = useState(() => keptAnswers(deviceShelf()));
  const [moves, setMoves] = useState(NO_MOVES);
  const told = useRef(false);
  const made = useMemo(() => rigFrom(answers), [answers]);
  const side = useMemo(() => sideOf(made.document), [made]);

  function change(next: Answers): void {
    setMoves(NO_MOVES);
    put(next);
  }
  function put(next: Answers): void {
    setAnswers(next);
    try {
      keepAnswers(deviceShelf(), next);
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
    const joins = group !== "" && group === moves.group;
    setMoves({ before: joins ? moves.before : [...moves.before, answers].slice(-DEPTH), group });
    put(next);
  }
  function undo(): void {
    put(moves.before.at(-1)!);
    setMoves({ before: moves.before.slice(0, -1), group: undefined });
  }
  const host: SideHost = {
    ground: (points, _, group) => draw(withDrawnGround(answers, points), group),
    connection: (metres, _, group) => draw(withDrawnConnections(answers, metres), group),
    takeBack(group) {
      if (moves.group !== group || moves.before.length === 0) return false;
      undo();
      return true;
    },
    done: () => setMoves((now) => (now.group === undefined ? now : { ...now, group: undefined })),
  };
  function confirm(question: QuestionId, right: boolean): void {
    const others = (answers.confirmed ?? []).filter((one) => one !== question);
    change({ ...answers, confirmed: right ? [...others, question] : others });
  }
  const canUndo = moves.before.length > 0;
  const reset = () => change({});
  return { answers, made, answer, confirm, change, reset, side, host, undo: canUndo ? undo : undefined };
}
