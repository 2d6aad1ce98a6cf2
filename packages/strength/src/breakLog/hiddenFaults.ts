/** Faults of cells with invisible characters, which could forge the text that is shown for a test. */
import { hiddenCharacter, rigFact, visibleText } from "@secondline/rig";
import type { LogColumn, LogFault } from "./logEntry.ts";
import { logFact } from "./logFacts.ts";
import type { WrittenTest } from "./readEntry.ts";

/** Text that can hide nothing. Most cells of a log are such text. */
const PLAIN_TEXT = /^[ -~]*$/;

/** One fault for every such cell of a line. A note may have several lines. */
export function hiddenFaults(fields: WrittenTest, line: number): LogFault[] {
  const faults: LogFault[] = [];
  for (const column of Object.keys(fields) as LogColumn[]) {
    const text = fields[column]!;
    const hidden = PLAIN_TEXT.test(text) ? undefined : hiddenCharacter(text, column === "note");
    if (hidden === undefined) continue;
    const message = logFact("cell.hidden", { hidden });
    const expected = rigFact("expected.plainNote", {});
    faults.push({ line, column, got: `"${visibleText(text)}"`, expected, message });
  }
  return faults;
}
