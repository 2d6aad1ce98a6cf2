/** Answers from a file: a group of named texts in JSON. Every fault at once, nothing guessed. */
import { describeValue, nearest, type RigIssue, readJson } from "@secondline/rig";
import { ANSWER_IDS, type Answers, answersSchema, QUESTIONS } from "./answers.ts";

export type AnswersReading =
  | { readonly ok: true; readonly answers: Answers }
  | { readonly ok: false; readonly issues: readonly RigIssue[] };

const ANSWERS_FILE = { noun: "a group of answers", longest: 1_000_000 };
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

function issuesOf(issue: SchemaIssue, document: unknown): readonly RigIssue[] {
  const path = issue.path.map(String).join(".");
  if (issue.code === "unrecognized_keys") return issue.keys.map((key) => unknownAnswer(key));
  const value = issue.path.reduce<unknown>((here, step) => (here as Record<PropertyKey, unknown>)?.[step], document);
  const [got, expected] = [describeValue(value), expectedAt(String(issue.path[0] ?? ""))];
  const where = path === "" ? "The file" : path;
  return [{ path, got, expected, message: `${where}: ${expected} is needed here, not ${got}.` }];
}

function expectedAt(name: string): string {
  switch (name) {
    case "profile":
      return 'a list of pairs such as ["0 m", "-1 m"]';
    case "stocks":
      return "a list of webbings or ropes as in a rig's file";
    case "drawn":
      return 'a list of "ground", "connections"';
    case "confirmed":
      return `a list of ${QUESTIONS.map(({ id }) => `"${id}"`).join(", ")}`;
    case "":
      return "a group of answers in { }";
    default:
      return 'a text such as "60 m", of at most 200 characters';
  }
}

function unknownAnswer(key: string): RigIssue {
  const names = [...ANSWER_IDS, ...OTHER_NAMES];
  const guess = nearest(key, names);
  const hint = guess === undefined ? ` There are: ${names.join(", ")}.` : ` Did you mean "${guess}"?`;
  const expected = guess === undefined ? `one of ${names.join(", ")}` : `"${guess}"`;
  return { path: key, got: describeValue(key), expected, message: `There is no answer "${key}".${hint}` };
}
