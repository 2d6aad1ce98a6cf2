/** The questions about a new rig as they are being answered: kept with every change, and moves in the sketch can be taken back. */
import { createStore, type StoreApi } from "zustand/vanilla";
import { closeGroup, type History, record, startHistory, undo } from "../history/history.ts";
import type { Shelf } from "../keeping/shelf.ts";
import type { SideHost } from "../side/held.ts";
import type { AnswerId, Answers, QuestionId } from "./answers.ts";
import { withAnswer, withDrawnConnections, withDrawnGround } from "./drawn.ts";
import { keepAnswers, keptAnswers } from "./keptAnswers.ts";

export interface NewRigState {
  /** Steps back are moves in the sketch; what is answered otherwise begins anew. */
  readonly moves: History<{ readonly answers: Answers }>;
}

export interface NewRigDesk {
  readonly store: StoreApi<NewRigState>;
  /** An empty text takes the answer back: the template's value stands again. */
  readonly answer: (id: AnswerId, text: string) => void;
  readonly confirm: (question: QuestionId, right: boolean) => void;
  readonly change: (answers: Answers) => void;
  readonly reset: () => void;
  readonly host: SideHost;
  /** Takes the last move in the sketch back. */
  readonly takeBack: () => void;
}

export interface NewRigServices {
  readonly shelf: () => Shelf;
  /** The answers could not be kept; told once, until they could be again. */
  readonly onTrouble: (error: unknown) => void;
}

export function createNewRigDesk({ shelf, onTrouble }: NewRigServices): NewRigDesk {
  const begun = (answers: Answers) => startHistory({ answers });
  const store = createStore<NewRigState>(() => ({ moves: begun(keptAnswers(shelf())) }));
  const moves = () => store.getState().moves;
  const answers = () => moves().present.answers;
  let trouble = false;

  function put(next: NewRigState["moves"]): void {
    store.setState({ moves: next });
    try {
      keepAnswers(shelf(), next.present.answers);
      trouble = false;
    } catch (error) {
      // Told once, not with every letter.
      if (!trouble) onTrouble(error);
      trouble = true;
    }
  }
  const change = (next: Answers) => put(begun(next));
  const draw = (next: Answers, group: string) =>
    put(record(moves(), "", { answers: next }, group === "" ? undefined : group));
  const takeBack = () => put(undo(moves()));

  return {
    store,
    answer: (id, text) => change(withAnswer(answers(), id, text)),
    confirm(question, right) {
      const others = (answers().confirmed ?? []).filter((one) => one !== question);
      change({ ...answers(), confirmed: right ? [...others, question] : others });
    },
    change,
    reset: () => change({}),
    host: {
      ground: (points, _, group) => draw(withDrawnGround(answers(), points), group),
      connection: (metres, _, group) => draw(withDrawnConnections(answers(), metres), group),
      takeBack(group) {
        if (moves().openGroup !== group || moves().past.length === 0) return false;
        takeBack();
        return true;
      },
      done: () => store.setState({ moves: closeGroup(moves()) }),
    },
    takeBack,
  };
}
