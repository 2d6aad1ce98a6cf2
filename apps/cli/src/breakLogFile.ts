/** Reads a break log; every fault names its line and column. */
import { type BreakTest, readBreakLog } from "@secondline/strength";
import { CommandFailure, EXIT } from "./failure.ts";
import { countOf, faultText } from "./input.ts";

export function readBreakLogFile(file: string, text: string): readonly BreakTest[] {
  const reading = readBreakLog(text);
  if (reading.ok) return reading.tests;
  throw new CommandFailure(EXIT.input, [
    `${file}: ${countOf(reading.faults)}; nothing was read`,
    ...reading.faults.map((fault) => {
      const at = fault.column === "" ? `line ${fault.line}` : `line ${fault.line}, ${fault.column}`;
      return `  ${at}: ${faultText(fault)}`;
    }),
  ]);
}
