/** Answers from a file and from `--set NAME=VALUE`, which goes before it. */

import { newRigWords } from "@secondline/words/newRig";
import { ANSWER_IDS, type AnswerId, type Answers, readAnswers } from "@secondline/workbench";
import { CommandFailure, EXIT } from "../failure.ts";
import { faults, LARGEST, readText } from "../input.ts";

const { say } = newRigWords;

export function givenAnswers(file: string | undefined, sets: readonly string[]): Answers {
  return { ...(file === undefined ? {} : fileAnswers(file)), ...setAnswers(sets) };
}

function fileAnswers(file: string): Answers {
  const read = readAnswers(readText(file, LARGEST.rig));
  if (!read.ok) throw faults(file, read);
  return read.answers;
}

function setAnswers(sets: readonly string[]): Answers {
  const answers: Partial<Record<AnswerId, string>> = {};
  for (const got of sets) {
    const [, name, value] = /^([A-Za-z]+)=\s*(\S.*)$/s.exec(got) ?? [];
    const id = ANSWER_IDS.find((one) => one === name);
    if (id === undefined || value === undefined) {
      throw new CommandFailure(EXIT.input, [say("cli.set", { got, names: ANSWER_IDS.join(", ") })]);
    }
    if (answers[id] !== undefined) throw new CommandFailure(EXIT.input, [say("cli.setTwice", { name: id })]);
    answers[id] = value;
  }
  return answers;
}
