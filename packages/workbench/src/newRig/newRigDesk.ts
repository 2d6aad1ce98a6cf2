/** The questions about a new rig as they are being answered: kept with every change, and moves in the sketch can be taken back. */
import { createStore, type StoreApi } from "zustand/vanilla";
import { closeGroup, type History, record, startHistory, undo } from "../history/history.ts";
import { keepingTrouble, type Shelf } from "../keeping/shelf.ts";
import type { SideHost } from "../side/held.ts";
import type { AnswerId, Answers, QuestionId } from "./answers.ts";
import { withAnswer, withDrawnConnections, withDrawnGround } from "./drawn.ts";
import { keepAnswers, keptAnswers } from "./keptAnswers.ts";
import { questionOf } from "./rigFrom.ts";

export interface NewRigState {
  /** Steps back are moves in the sketch and replacements of all answers; what is answered otherwise begins anew. */
  readonly moves: History<{ readonly answers: Answers }>;
  /** The device did not keep the last change, which lives on while the page is open. */
  readonly unkept?: Unkept;
}

interface Unkept {
  readonly reason: string;
  /** The question whose answer it is, if it is of one. */
  readonly at?: QuestionId;
}

export interface NewRigDesk {
  readonly store: StoreApi<NewRigState>;
  /** An empty text takes the answer back: the template's value stands again. */
  readonly answer: (id: AnswerId, text: string) => void;
  readonly confirm: (question: QuestionId, right: boolean) => void;
  readonly change: (answers: Answers) => void;
  /** Other answers in the place of all; they can be taken back until something else is answered. */
  readonly replace: (answers: Answers) => void;
  readonly reset: () => void;
  readonly host: SideHost;
  /** Takes the last move in the sketch, or a replacement, back. */
  readonly takeBack: () => void;
}

const REPLACED = "replaced";

/** Whether the last step put other answers in the place of all. */
export const wasReplaced = ({ past }: NewRigState["moves"]): boolean => past.at(-1)?.label === REPLACED;

export interface NewRigServices {
  readonly shelf: () => Shelf;
}

export function createNewRigDesk({ shelf }: NewRigServices): NewRigDesk {
  const begun = (answers: Answers) => startHistory({ answers });
  function stateOf(moves: NewRigState["moves"], at?: QuestionId): NewRigState {
    try {
      keepAnswers(shelf(), moves.present.answers);
      return { moves };
    } catch (error) {
      return { moves, unkept: { reason: keepingTrouble(error), ...(at === undefined ? {} : { at }) } };
    }
  }
  // Answers that the device did not keep before are tried again at once.
  const store = createStore<NewRigState>(() => stateOf(begun(keptAnswers(shelf()))));
  const moves = () => store.getState().moves;
  const answers = () => moves().present.answers;
  const put = (next: NewRigState["moves"], at?: QuestionId) => store.setState(stateOf(next, at), true);
  const change = (next: Answers, at?: QuestionId) => put(begun(next), at);
  const replace = (next: Answers) => put(record(moves(), REPLACED, { answers: next }));
  const draw = (next: Answers, group: string, at: QuestionId) =>
    put(record(moves(), "", { answers: next }, group === "" ? undefined : group), at);
  const takeBack = () => put(undo(moves()));

  return {
    store,
    answer: (id, text) => change(withAnswer(answers(), id, text), questionOf(id)),
    confirm(question, right) {
      const others = (answers().confirmed ?? []).filter((one) => one !== question);
      change({ ...answers(), confirmed: right ? [...others, question] : others }, question);
    },
    change: (next) => change(next),
    replace,
    reset: () => replace({}),
    host: {
      ground: (points, _, group) => draw(withDrawnGround(answers(), points), group, "ground"),
      connection: (metres, _, group) => draw(withDrawnConnections(answers(), metres), group, "backup"),
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
