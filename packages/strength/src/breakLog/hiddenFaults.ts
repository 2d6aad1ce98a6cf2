/** Faults of cells that hold characters which are not seen: they could forge what is shown of a test. */
import { HIDDEN_REMEDY, hiddenCharacter, visibleText } from "@secondline/rig";
import type { LogFault } from "./breakTest.ts";
import type { TestFields } from "./readTest.ts";

/** One fault for every such cell of a line. A note may have several lines. */
export function hiddenFaults(fields: TestFields, line: number): LogFault[] {
  return Object.entries(fields).flatMap(([column, text]) => {
    const hidden = hiddenCharacter(text, column === "note");
    if (hidden === undefined) return [];
    const got = `"${visibleText(text)}"`;
    const expected = "text without hidden characters";
    return [{ line, column, got, expected, message: `There is ${hidden} in this cell. ${HIDDEN_REMEDY}.` }];
  });
}
