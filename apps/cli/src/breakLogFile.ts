/** Reads a break log; every fault names its line and column. */
import { type BreakTest, readBreakLog } from "@secondline/strength";
import { faultLines, faultText, LARGEST, readText } from "./input.ts";

export const readBreakLogFile = (file: string): readonly BreakTest[] =>
  breakLogOf(file, readText(file, LARGEST.breakLog));

export function breakLogOf(file: string, text: string): readonly BreakTest[] {
  const reading = readBreakLog(text);
  if (reading.ok) return reading.tests;
  throw faultLines(
    (count) => `${file}: ${count}; nothing was read`,
    { issues: reading.faults },
    (fault) => {
      const at = fault.column === "" ? `line ${fault.line}` : `line ${fault.line}, ${fault.column}`;
      return `${at}: ${faultText(fault)}`;
    },
  );
}
