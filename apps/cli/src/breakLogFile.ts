/** Reads a break log; every fault names its line and column. */
import { type BreakTest, type LogFault, readBreakLog } from "@secondline/strength";
import { faultLines, faultText, LARGEST, readText } from "./input.ts";

export const readBreakLogFile = (file: string): readonly BreakTest[] =>
  breakLogOf(file, readText(file, LARGEST.breakLog));

export function breakLogOf(file: string, text: string): readonly BreakTest[] {
  const reading = readBreakLog(text);
  if (reading.ok) return reading.tests;
  throw logFaults(file, reading.faults);
}

/** One line per fault, with its line and column. */
export const logFaults = (file: string, issues: readonly LogFault[]) =>
  faultLines(
    (count) => `${file}: ${count}; nothing was read`,
    { issues },
    (fault) => {
      const at = fault.column === "" ? `line ${fault.line}` : `line ${fault.line}, ${fault.column}`;
      return `${at}: ${faultText(fault)}`;
    },
  );
