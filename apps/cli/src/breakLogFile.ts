/** Reads a break log; every fault names its line and column. */

import { readJson } from "@secondline/rig";
import { type BreakTest, type LogFault, readBreakLog } from "@secondline/strength";
import { listed } from "@secondline/words";
import { type ColumnsKey, sayColumns as say } from "@secondline/words/columns";
import { tellFault } from "@secondline/words/faults";
import { sayFiles } from "@secondline/words/terminal/files";
import { columnMatchSchema, missingColumns, readLogTable, readMatched } from "@secondline/workbench";
import { CommandFailure, EXIT } from "./failure.ts";
import { faultAt, faultLines, LARGEST_BYTES, readText } from "./input.ts";

/** `columns`: a saved matching, for a file with names of its own. */
export const readBreakLogFile = (file: string, columns?: string): readonly BreakTest[] => {
  const text = readText(file, LARGEST_BYTES.breakLog);
  return columns === undefined ? breakLogOf(file, text) : ownTable(file, text, columns);
};

function ownTable(file: string, text: string, columns: string): readonly BreakTest[] {
  const refuse = (key: ColumnsKey, values: Readonly<Record<string, string | number>>): CommandFailure =>
    new CommandFailure(EXIT.input, [say(key, values)]);
  const json = readJson(readText(columns, LARGEST_BYTES.breakLog), {
    noun: sayFiles("noun.matching"),
    longest: LARGEST_BYTES.breakLog,
  });
  const parsed = columnMatchSchema.safeParse(json.parsed ? json.document : undefined);
  if (!parsed.success) {
    const fault = json.issues[0]?.message ?? parsed.error.issues[0]?.message ?? "";
    const why = tellFault(fault).replace(/\.$/, "");
    throw refuse("file.matching", { file: columns, why });
  }
  const match = parsed.data;
  const missing = missingColumns(match);
  if (missing.length > 0) throw refuse("file.missing", { file: columns, list: listed(missing) });
  const found = readLogTable(text);
  if (!found.ok) {
    const { fault } = found;
    if (fault.kind === "tooLong") throw refuse(`file.tooLong.${fault.of}`, { file, most: fault.most });
    throw refuse(`file.${fault.kind}`, { file });
  }
  const { table } = found;
  for (const from of Object.values(match.columns)) {
    if (from && "column" in from && !table.columns.includes(from.column))
      throw refuse("file.noColumn", { file: columns, name: from.column, list: listed(table.columns) });
  }
  const reading = readMatched(table, match);
  if (reading.ok) return reading.tests;
  throw logFaults(file, reading.faults);
}

export function breakLogOf(file: string, text: string): readonly BreakTest[] {
  const reading = readBreakLog(text);
  if (reading.ok) return reading.tests;
  throw logFaults(file, reading.faults);
}

/** One line per fault, with its line and column. */
export const logFaults = (file: string, issues: readonly LogFault[]) =>
  faultLines((count) => sayFiles("faults.breakLog", { file, count }), { issues }, faultAt);
