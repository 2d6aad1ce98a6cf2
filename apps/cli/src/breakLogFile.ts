/** Reads a break log; every fault names its line and column. */
import { type BreakTest, readBreakLog } from "@secondline/strength";
import { CommandFailure, EXIT } from "./failure.ts";

export function readBreakLogFile(file: string, text: string): readonly BreakTest[] {
  const reading = readBreakLog(text);
  if (reading.ok) return reading.tests;
  const count = reading.faults.length === 1 ? "one fault" : `${reading.faults.length} faults`;
  throw new CommandFailure(EXIT.input, [
    `${file}: ${count}; nothing was read`,
    ...reading.faults.map(({ line, column, message, got, expected }) => {
      const at = column === "" ? `line ${line}` : `line ${line}, ${column}`;
      return `  ${at}: ${message} Got ${got}; expected ${expected}.`;
    }),
  ]);
}
