/** Answers from a file and from `--set NAME=VALUE`, which goes before it. */

import { listed } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import {
  ANSWER_IDS,
  type AnswerId,
  type Answers,
  type LengthUnit,
  MOST_TEXT,
  readAnswers,
  readProfile,
} from "@secondline/workbench";
import { CommandFailure, EXIT } from "../failure.ts";
import { faults, LARGEST_BYTES, readText } from "../input.ts";

const { say } = newRigWords;

export function givenAnswers(file: string | undefined, sets: readonly string[]): Answers {
  return { ...(file === undefined ? {} : fileAnswers(file)), ...setAnswers(sets) };
}

function fileAnswers(file: string): Answers {
  const read = readAnswers(readText(file, LARGEST_BYTES.rig));
  if (!read.ok) throw faults(file, read);
  return read.answers;
}

function setAnswers(sets: readonly string[]): Answers {
  const answers: Partial<Record<AnswerId, string>> = {};
  for (const got of sets) {
    const [, name, value] = /^([A-Za-z]+)=\s*(\S.*)$/s.exec(got) ?? [];
    const id = ANSWER_IDS.find((one) => one === name);
    if (id === undefined || value === undefined) {
      throw new CommandFailure(EXIT.input, [say("cli.set", { got, names: listed(ANSWER_IDS) })]);
    }
    if (answers[id] !== undefined) throw new CommandFailure(EXIT.input, [say("cli.setTwice", { name: id })]);
    answers[id] = value;
  }
  return answers;
}

export interface GivenGround {
  readonly profile: NonNullable<Answers["profile"]>;
  readonly unit: LengthUnit;
}

/** The ground from a file; an option must give its unit if the file does not. */
export function groundOf(file: string, unit: LengthUnit | undefined): GivenGround {
  const read = readProfile(readText(file, MOST_TEXT), unit);
  if (read.ok) return { profile: read.profile.map(([x, z]) => [x, z]), unit: read.unit };
  throw new CommandFailure(
    EXIT.input,
    read.faults.map((fault) => `${file}: ${fault.kind === "unit" ? say("cli.unit") : newRigWords.fileFault(fault)}`),
  );
}
