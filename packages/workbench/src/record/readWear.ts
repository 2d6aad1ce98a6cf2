/** Wear records and break logs from files and as text. A file with a fault changes nothing. */
import { type LogFault, readBreakLog, readWearRecord, writeBreakLog } from "@secondline/strength";
import { sayWear } from "@secondline/words/page/wear";
import { type LogTable, readLogTable } from "../breakLog/logTable.ts";
import { isMatched } from "../breakLog/match.ts";
import type { BreakLog, WrittenRecord } from "../documents/documents.ts";
import { issueLines, wrongInIt } from "../files/issueLines.ts";

export type OpenedWear =
  | { readonly kind: "record"; readonly record: WrittenRecord }
  | { readonly kind: "log"; readonly log: BreakLog }
  | { readonly kind: "logFaults"; readonly faults: readonly LogFault[] }
  /** A table with names of its own: somebody must say which column is which. */
  | { readonly kind: "columns"; readonly table: LogTable; readonly invented: boolean }
  | { readonly kind: "refused"; readonly text: string; readonly details: readonly string[] };

/** A record or a log is text of some kilobytes; what is larger is not even read [B]. */
const LARGEST_FILE_BYTES = 5_000_000;

interface FileLike {
  readonly name: string;
  readonly size: number;
  text(): Promise<string>;
}

export async function openWearFile(file: FileLike): Promise<OpenedWear> {
  if (file.size > LARGEST_FILE_BYTES) return refused(sayWear("wearFiles.tooLarge", { name: file.name }));
  let text: string;
  try {
    text = await file.text();
  } catch {
    return refused(sayWear("wearFiles.couldNotRead", { name: file.name }));
  }
  return readWearText(text, file.name);
}

/** JSON is a record, everything else a log. */
export function readWearText(text: string, name: string): OpenedWear {
  return /^\s*\{/.test(text) || /\.json$/i.test(name) ? readRecord(text, name) : readLog(text, name);
}

function readRecord(written: string, name: string): OpenedWear {
  const read = readWearRecord(written);
  if (read.ok) return { kind: "record", record: read.document as WrittenRecord };
  const text = sayWear("wearFiles.notAWearRecord", { name, wrongInIt: wrongInIt(read) });
  return refused(text, issueLines(read));
}

function readLog(text: string, name: string): OpenedWear {
  const read = readBreakLog(text);
  if (!read.ok) {
    const found = readLogTable(text);
    if (!found.ok || isMatched(found.table)) return { kind: "logFaults", faults: read.faults };
    return { kind: "columns", table: found.table, invented: saysInvented(text) };
  }
  return { kind: "log", log: { name: name.replace(/\.[^.]+$/, ""), invented: saysInvented(text), tests: read.tests } };
}

const refused = (text: string, details: readonly string[] = []): OpenedWear => ({ kind: "refused", text, details });

/** The log says so itself when it is invented, so that it still does when it comes back. */
export function logText({ invented, tests }: BreakLog): string {
  const marked = tests.some((test) => test.invented);
  return `${invented && !marked ? "# Invented for demonstration: nothing in it was ever pulled.\n" : ""}${writeBreakLog(tests)}`;
}

/** Remarks at the head of a log say whether its numbers are made up. */
export const saysInvented = (csv: string): boolean => /^\s*#[^\n]*\binvented\b/i.test(csv);
