/**
 * The one way in for the text of a JSON file: its size and depth are looked at before it is parsed; names given twice
 * and numbers that a computer cannot hold are faults. What the document means is not looked at here.
 */
import type { FactValue } from "./fact.ts";
import { DEEPEST_NESTING, scanJson, tooDeep } from "./jsonScan.ts";
import type { RigIssue } from "./rig.ts";
import { fact } from "./rigFacts.ts";
import { describeValue } from "./units.ts";

export interface JsonFormat {
  /** What the file should be. */
  readonly noun: FactValue;
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
      got: fact("got.nameAgain", {}),
      expected: fact("expected.nameOnce", {}),
      message: fact("file.twice", {}),
    })),
    ...lost.map(({ path, written, large }) => {
      const got = written.length > 40 ? `${written.slice(0, 40)}…` : written;
      const expected = fact(large ? "expected.smallerNumber" : "expected.largerNumber", {});
      return { path, got, expected, message: fact(large ? "number.tooLargeToCompute" : "number.tooSmall", { got }) };
    }),
  ];
}

function tooLarge(length: number, { noun, longest }: JsonFormat): RigIssue {
  const got = fact("got.millionCharacters", { count: { rounded: length / 1e6, decimals: 1 } });
  const expected = fact("expected.millionCharacters", { count: longest / 1e6 });
  return { path: "", got, expected, message: fact("file.tooLarge", { noun, size: got }) };
}

export function tooDeeplyNested({ noun }: Pick<JsonFormat, "noun">): RigIssue {
  const got = fact("got.nested", { count: DEEPEST_NESTING });
  const expected = fact("expected.atMost", { most: DEEPEST_NESTING });
  return { path: "", got, expected, message: fact("file.nested", { noun, got }) };
}

function notJson(text: string, error: unknown, { noun }: JsonFormat): RigIssue {
  const position = /position (\d+)/.exec(String(error))?.[1];
  const line = position === undefined ? undefined : text.slice(0, Number(position)).split("\n").length;
  const where = line === undefined ? undefined : fact("file.troubleInLine", { line });
  const got = text.trim() === "" ? fact("got.emptyFile", {}) : describeValue(text.trim().slice(0, 40));
  return { path: "", got, expected: fact("expected.json", {}), message: fact("file.notJson", { noun }, where) };
}
