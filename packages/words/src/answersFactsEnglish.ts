/** Faults of a file of answers for a new rig: a sentence for every fact. */
import type { AnswersFacts } from "./answersFacts.ts";

export const ANSWERS_FACTS_ENGLISH = {
  "noun.answers": "a group of answers",
  "expected.profile": 'a list of pairs such as ["0 m", "-1 m"]',
  "expected.stocks": "a list of webbings or ropes as in a rig's file",
  "expected.drawn": 'a list of "ground", "connections"',
  "expected.confirmed": "a list of {list}",
  "expected.answers": "a group of answers in { }",
  "expected.answer": 'a text such as "60 m", of at most 200 characters',
  "answers.needed": "{at}: {expected} is needed here, not {got}.",
  "answers.fileNeeded": "The file: {expected} is needed here, not {got}.",
  "answers.unknown": 'There is no answer "{key}".',
  "answers.known": "There are: {list}.",
} as const satisfies Record<keyof AnswersFacts, string>;
