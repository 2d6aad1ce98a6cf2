/** Reads what the user names: text, JSON, rigs. Everything wrong with a file is told at once, with its place in it. */
import { readFileSync, statSync } from "node:fs";
import { CommandFailure, EXIT } from "./failure.ts";

/** More than any of our files needs; a larger one is something else [bytes]. */
const LARGEST = 64 * 1024 * 1024;

export function readText(file: string): string {
  try {
    refuseLarge(file, statSync(file).size);
    const bytes = readFileSync(file);
    // What comes through a pipe has no size beforehand.
    refuseLarge(file, bytes.length);
    return textOf(file, bytes);
  } catch (error) {
    if (error instanceof CommandFailure) throw error;
    throw new CommandFailure(EXIT.input, [`${file}: ${reason(error)}`]);
  }
}

function refuseLarge(file: string, size: number): void {
  if (size <= LARGEST) return;
  const megabytes = Math.round(size / 2 ** 20);
  throw new CommandFailure(EXIT.input, [`${file}: ${megabytes} MB is too large for a file of ours.`]);
}

function reason(error: unknown): string {
  const code = (error as { code?: string }).code;
  if (code === "ENOENT") return "there is no such file";
  if (code === "EISDIR") return "this is a folder, not a file";
  if (code === "EACCES" || code === "EPERM") return "this file may not be read";
  return error instanceof Error ? error.message : String(error);
}

/** Text in UTF-8, without a byte order mark; anything else is refused rather than read wrongly. */
function textOf(file: string, bytes: Buffer): string {
  const wide = bytes.length >= 2 && (bytes.readUInt16LE(0) === 0xfeff || bytes.readUInt16BE(0) === 0xfeff);
  try {
    if (!wide) return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    // Told below.
  }
  throw new CommandFailure(EXIT.input, [
    `${file}: this file is not in UTF-8${wide ? " but in UTF-16" : ""}. Save it again with the encoding UTF-8.`,
  ]);
}

export function readJson(file: string): unknown {
  const text = readText(file);
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new CommandFailure(EXIT.input, [
      `${file}: this is not JSON. ${error instanceof Error ? error.message : String(error)}`,
    ]);
  }
}

export interface Fault {
  readonly got: string;
  readonly expected: string;
  /** The fault in one sentence. */
  readonly message?: string;
}

/** The fault in words: its sentence, and of "got" and "expected" what the sentence does not say already. */
export function faultText({ message, got, expected }: Fault): string {
  if (message === undefined) return `Got ${got}; expected ${expected}.`;
  const missing = [
    ...(message.includes(got) ? [] : [`got ${got}`]),
    ...(message.includes(expected) ? [] : [`expected ${expected}`]),
  ].join("; ");
  return missing === "" ? message : `${message} ${missing[0]!.toUpperCase()}${missing.slice(1)}.`;
}

export const countOf = (faults: readonly unknown[]) => (faults.length === 1 ? "one fault" : `${faults.length} faults`);

/** One line per fault, with its path in the file. */
export function faults(file: string, issues: readonly (Fault & { readonly path: string })[]): CommandFailure {
  return new CommandFailure(EXIT.input, [
    `${file}: ${countOf(issues)}`,
    ...issues.map((issue) => `  ${issue.path === "" ? "(the file)" : issue.path}: ${faultText(issue)}`),
  ]);
}
