/** Answers from a file: a group of named texts in JSON. Every fault at once, nothing guessed. */
import {
  describeValue,
  type FactsOf,
  guessed,
  type Issue,
  nearest,
  type RigFact,
  readJson,
  rigFact,
} from "@secondline/rig";
import { type AnswersFacts, answersFact } from "@secondline/words/faults";
import { ANSWER_IDS, type Answers, answersSchema, QUESTIONS } from "./answers.ts";

export type AnswersReading =
  | { readonly ok: true; readonly answers: Answers }
  | { readonly ok: false; readonly issues: readonly AnswersIssue[] };

type AnswersFact = FactsOf<AnswersFacts> | RigFact;
type AnswersIssue = Issue<AnswersFact>;

const ANSWERS_FILE = { noun: answersFact("noun.answers", {}), longest: 1_000_000 };
const OTHER_NAMES = ["profile", "stocks", "drawn", "confirmed"];

/** `text`: of the file. */
export function readAnswers(text: string): AnswersReading {
  const json = readJson(text, ANSWERS_FILE);
  if (!json.parsed || json.issues.length > 0) return { ok: false, issues: json.issues };
  const read = answersSchema.safeParse(json.document);
  if (read.success) return { ok: true, answers: read.data };
  return { ok: false, issues: read.error.issues.flatMap((issue) => issuesOf(issue, json.document)) };
}

type SchemaIssue = Extract<ReturnType<typeof answersSchema.safeParse>, { success: false }>["error"]["issues"][number];

function issuesOf(issue: SchemaIssue, document: unknown): readonly AnswersIssue[] {
  const path = issue.path.map(String).join(".");
  if (issue.code === "unrecognized_keys") return issue.keys.map((key) => unknownAnswer(key));
  const value = issue.path.reduce<unknown>((here, step) => (here as Record<PropertyKey, unknown>)?.[step], document);
  const [got, expected] = [describeValue(value), expectedAt(String(issue.path[0] ?? ""))];
  const message =
    path === ""
      ? answersFact("answers.fileNeeded", { expected, got })
      : answersFact("answers.needed", { at: path, expected, got });
  return [{ path, got, expected, message }];
}

function expectedAt(name: string): FactsOf<AnswersFacts> {
  switch (name) {
    case "profile":
    case "stocks":
    case "drawn":
      return answersFact(`expected.${name}`, {});
    case "confirmed":
      return answersFact("expected.confirmed", { list: { list: QUESTIONS.map(({ id }) => `"${id}"`) } });
    case "":
      return answersFact("expected.answers", {});
    default:
      return answersFact("expected.answer", {});
  }
}

function unknownAnswer(key: string): AnswersIssue {
  const list = { list: [...ANSWER_IDS, ...OTHER_NAMES] };
  const guess = nearest(key, list.list);
  const next = guessed(guess) ?? answersFact("answers.known", { list });
  const expected = guess === undefined ? rigFact("expected.oneOf", { list }) : `"${guess}"`;
  const message = { ...answersFact("answers.unknown", { key }), next } as AnswersFact;
  return { path: key, got: describeValue(key), expected, message };
}
