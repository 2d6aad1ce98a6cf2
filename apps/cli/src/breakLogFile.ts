/** Reads a break log; every fault names its line and column. */
import type { Rig } from "@secondline/rig";
import { type BreakTest, readBreakLog, testUseWords } from "@secondline/strength";
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

/** Which of the tests count towards the webbings and ropes of a rig, and why the others do not. */
export function testNotes({ main, backup, leash }: Rig, tests: readonly BreakTest[]): string[] {
  const sections = [...main.sections, ...(backup?.sections ?? [])];
  return testUseWords([...sections.map(({ stock }) => stock), leash.stock], tests);
}
