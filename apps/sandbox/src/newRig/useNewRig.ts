import { newRigWords } from "@secondline/words/newRig";
import { type AnswerId, type Answers, type NewRig, type QuestionId, rigFrom } from "@secondline/workbench";
import { useMemo, useRef, useState } from "react";
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
}

/** The answers so far and the rig that follows; kept on this device with every change. */
export function useNewRig(): NewRigDesk {
  const { tell } = useActions();
  const [answers, setAnswers] = useState(() => keptAnswers(deviceShelf()));
  const told = useRef(false);
  const made = useMemo(() => rigFrom(answers), [answers]);

  function change(next: Answers): void {
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
    const { [id]: _, ...others } = answers;
    change(text.trim() === "" ? others : { ...others, [id]: text });
  }
  function confirm(question: QuestionId, right: boolean): void {
    const others = (answers.confirmed ?? []).filter((one) => one !== question);
    change({ ...answers, confirmed: right ? [...others, question] : others });
  }
  return { answers, made, answer, confirm, change, reset: () => change({}) };
}
