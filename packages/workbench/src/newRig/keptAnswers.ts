/** Unfinished answers, kept on this device: a reload loses no answer. */

import { type Shelf, setAside } from "../keeping/shelf.ts";
import type { Answers } from "./answers.ts";
import { readAnswers } from "./readAnswers.ts";

const KEY = "secondline.newRig";

/** What was kept; what cannot be read is set aside and gives no answers. */
export function keptAnswers(shelf: Shelf): Answers {
  const text = shelf.getItem(KEY);
  if (text === null || text === "") return {};
  const read = readAnswers(text);
  if (read.ok) return read.answers;
  setAside(shelf, KEY, text);
  return {};
}

/** Throws what the storage throws when it is full or forbidden. */
export function keepAnswers(shelf: Shelf, answers: Answers): void {
  shelf.setItem(KEY, Object.keys(answers).length === 0 ? "" : JSON.stringify(answers));
}

/** Answers as a file, which the page opens and the terminal takes. */
export const answersText = (answers: Answers): string => `${JSON.stringify(answers, null, 2)}\n`;
