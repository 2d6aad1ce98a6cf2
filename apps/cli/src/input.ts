/** Reads the files that the user names: text, JSON, rigs. All faults of a file are told at once, each with its place. */
import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import { type FactValue, type Issues, issuesListed, MAX_RIG_TEXT, readJson } from "@secondline/rig";
import { quantity } from "@secondline/words";
import { tellFault } from "@secondline/words/faults";
import { tellLogFault } from "@secondline/words/logFaults";
import { moreText } from "@secondline/words/more";
import { sayFiles } from "@secondline/words/terminal/files";
import { CommandFailure, EXIT } from "./failure.ts";
import { readTrouble } from "./fileTrouble.ts";

/** Largest files that are read, by kind [bytes]. */
export const LARGEST_BYTES = {
  rig: MAX_RIG_TEXT,
  wear: 5_000_000,
  problem: 5_000_000,
  breakLog: 5_000_000,
  recording: 60_000_000,
} as const;

/** Reads a text of at most `largest` bytes; a larger one is refused before it is read. */
export function readText(file: string, largest: number): string {
  try {
    return textOf(file, readBytes(file, largest));
  } catch (error) {
    if (error instanceof CommandFailure) throw error;
    throw new CommandFailure(EXIT.input, [`${file}: ${readTrouble(error)}`]);
  }
}

/** A pipe does not tell its size beforehand, so at most one byte too many is read. */
function readBytes(file: string, largest: number): Buffer {
  const open = openSync(file, "r");
  try {
    const { size } = fstatSync(open);
    if (size > largest)
      throw refuse(sayFiles("unread.tooLarge", { file, size: megabytes(size), most: megabytes(largest) }));
    const bytes = Buffer.alloc(largest + 1);
    let length = 0;
    for (let read = -1; read !== 0 && length < bytes.length; length += read) {
      read = readSync(open, bytes, length, bytes.length - length, null);
    }
    if (length > largest) throw refuse(sayFiles("unread.tooLong", { file, most: megabytes(largest) }));
    return bytes.subarray(0, length);
  } finally {
    closeSync(open);
  }
}

const refuse = (line: string) => new CommandFailure(EXIT.input, [line]);
const megabytes = (bytes: number) => `${quantity.number(Math.ceil(bytes / 1e5) / 10)} MB`;

/** Text in UTF-8, without a byte order mark; anything else is refused rather than read wrongly. */
function textOf(file: string, bytes: Buffer): string {
  const wide = bytes.length >= 2 && (bytes.readUInt16LE(0) === 0xfeff || bytes.readUInt16BE(0) === 0xfeff);
  try {
    if (!wide) return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    // The code below tells the fault.
  }
  throw refuse(sayFiles(wide ? "unread.utf16" : "unread.notUtf8", { file }));
}

export interface JsonFile {
  readonly file: string;
  readonly text: string;
  readonly document: unknown;
  /** Faults of the text itself, apart from its meaning. */
  readonly issues: readonly PlacedFault[];
}

/** Parses a file; throws if it holds no document. */
export const readJsonFile = (file: string, largest: number): JsonFile => jsonOf(file, readText(file, largest), largest);

export function jsonOf(file: string, text: string, largest: number): JsonFile {
  const json = readJson(text, { noun: sayFiles("noun.anyOfOurs"), longest: largest });
  if (!json.parsed) throw faults(file, json);
  return { file, text, document: json.document, issues: json.issues };
}

export interface InputFault {
  readonly got: FactValue;
  readonly expected: FactValue;
  /** The fault itself; absent if only the two fields above are known. */
  readonly message?: FactValue;
}

/** The fault in words: its sentence, then "got" and "expected" as far as the sentence does not contain them. */
function faultText({ message: fault, ...placed }: InputFault, tell: (told: FactValue) => string): string {
  const [message, got, expected] = [tell(fault ?? ""), tell(placed.got), tell(placed.expected)];
  const values = { message, got, expected };
  if (fault === undefined) return sayFiles("fault.unworded", values);
  const [saysGot, saysExpected] = [message.includes(got), message.includes(expected)];
  if (saysGot && saysExpected) return values.message;
  return sayFiles(saysGot ? "fault.expected" : saysExpected ? "fault.got" : "fault.gotExpected", values);
}

/** A fault that comes in words from a package without facts: each text is looked up by its English. */
export const inBroughtWords = <
  T extends { readonly got: string; readonly expected: string; readonly message?: string },
>(
  fault: T,
) => ({
  ...fault,
  got: { brought: fault.got },
  expected: { brought: fault.expected },
  ...(fault.message === undefined ? {} : { message: { brought: fault.message } }),
});

interface CellFault extends InputFault {
  readonly line: number;
  /** Empty where the whole line is at fault. */
  readonly column: string;
}

/** The fault with its line and column. */
export function faultAt(fault: CellFault): string {
  const { line, column } = fault;
  const values = { line, column, fault: faultText(fault, tellLogFault) };
  return sayFiles(column === "" ? "fault.atLine" : "fault.atCell", values);
}

export type PlacedFault = InputFault & { readonly path: string };

/** Lines printed of a list of faults; it ends with the number of the others. */
const MOST_LINES = 20;

/** A heading with the number of faults, then a line for each of the first. `line` says where a fault is, and what. */
export function faultLines<T>(heading: (count: number) => string, found: Issues<T>, line: (fault: T) => string) {
  const { issues, more = 0 } = issuesListed(found.issues, found.more, MOST_LINES);
  const count = issues.length + more;
  return new CommandFailure(EXIT.input, [
    heading(count),
    ...issues.map((fault) => `  ${shortened(line(fault), 520)}`),
    ...(more === 0 ? [] : [`  ${moreText(more)}`]),
  ]);
}

/** One line per fault, with its path in the file. */
export function faults(file: string, found: Issues<PlacedFault>): CommandFailure {
  return faultLines(
    (count) => sayFiles("faults.document", { file, count }),
    found,
    (issue) =>
      `${issue.path === "" ? sayFiles("fault.wholeFile") : shortened(issue.path, 120)}: ${faultText(issue, tellFault)}`,
  );
}

/** A name in a file may be as long as the file. */
const shortened = (text: string, longest: number) => (text.length > longest ? `${text.slice(0, longest)}…` : text);
