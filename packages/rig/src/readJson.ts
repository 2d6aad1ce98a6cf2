/**
 * The one way in for the text of a JSON file: its size and depth are looked at before it is parsed; names given twice
 * and numbers that a computer cannot hold are faults. What the document means is not looked at here.
 */
import { DEEPEST_NESTING, scanJson, tooDeep } from "./jsonScan.ts";
import type { RigIssue } from "./rig.ts";
import { describeValue } from "./units.ts";

export interface JsonFormat {
  /** What the file should be, "a rig". */
  readonly noun: string;
  /** Longest text [characters]. */
  readonly longest: number;
}

/** `document` is there when the text could be parsed, also beside issues. */
export type JsonReading =
  | { readonly parsed: true; readonly document: unknown; readonly issues: readonly RigIssue[] }
  | { readonly parsed: false; readonly issues: readonly RigIssue[] };

/** Parses a text. A byte order mark before it is passed over. Never throws. */
export function readJson(text: string, format: JsonFormat): JsonReading {
  const refused = (issue: RigIssue): JsonReading => ({ parsed: false, issues: [issue] });
  if (text.length > format.longest) return refused(tooLarge(text.length, format));
  const json = text.replace(/^\uFEFF/, "");
  if (tooDeep(json)) return refused(tooDeeplyNested(format));
  try {
    const document: unknown = JSON.parse(json);
    return { parsed: true, document, issues: scanIssues(json) };
  } catch (error) {
    return refused(notJson(json, error, format));
  }
}

function scanIssues(text: string): RigIssue[] {
  const { repeated, lost } = scanJson(text);
  return [
    ...repeated.map((path) => ({
      path,
      got: "a name again",
      expected: "a name once",
      message: "This is given twice in the same group; which one is meant? Delete the other.",
    })),
    ...lost.map(({ path, written, large }) => {
      const size = large ? "large" : "small";
      const got = written.length > 40 ? `${written.slice(0, 40)}…` : written;
      const expected = `a ${large ? "smaller" : "larger"} number${large ? "" : ", or 0"}`;
      return { path, got, expected, message: `${got} is too ${size} a number to be computed with.` };
    }),
  ];
}

function tooLarge(length: number, { noun, longest }: JsonFormat): RigIssue {
  const size = `${(length / 1e6).toFixed(1)} million characters`;
  const expected = `at most ${longest / 1e6} million characters`;
  return { path: "", got: size, expected, message: `This file is too large to be ${noun}: it has ${size}.` };
}

export function tooDeeplyNested({ noun }: Pick<JsonFormat, "noun">): RigIssue {
  const got = `more than ${DEEPEST_NESTING} groups and lists within one another`;
  const message = `This file is not ${noun}: it has ${got}.`;
  return { path: "", got, expected: `at most ${DEEPEST_NESTING}`, message };
}

function notJson(text: string, error: unknown, { noun }: JsonFormat): RigIssue {
  const position = /position (\d+)/.exec(String(error))?.[1];
  const line = position === undefined ? undefined : text.slice(0, Number(position)).split("\n").length;
  const where = line === undefined ? "" : ` The trouble is in line ${line}.`;
  const got = text.trim() === "" ? "an empty file" : describeValue(text.trim().slice(0, 40));
  return { path: "", got, expected: "a JSON file", message: `This file is not JSON, so it is not ${noun}.${where}` };
}
