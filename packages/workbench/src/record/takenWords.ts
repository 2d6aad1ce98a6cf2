/** What is said of dates and tests beside the record. */

import type { Outlook } from "@secondline/scenarios";
import type { BreakTest } from "@secondline/strength";
import { listed, englishWords as words } from "@secondline/words";
import { dayText } from "@secondline/words/dates";
import { formatForce } from "@secondline/words/formats";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { sayWear } from "@secondline/words/page/wear";
import { untilWords } from "@secondline/words/until";
import { resultWords } from "../breakLog/testGroups.ts";
import type { SandboxState } from "../inHand/state.ts";
import { dayOf } from "../wear/days.ts";

/** A test of the log in one line. */
export function testLine(test: BreakTest): string {
  const { date, failureMode, failurePlace, batch, takenFrom, note } = test;
  const said = [
    resultWords(test, formatForce),
    failureMode,
    failurePlace,
    batch && sayBreakLog("testTable.batch", { batch }),
    takenFrom,
    note,
  ];
  return `${date ? `${dayText(date)}: ` : ""}${listed(said.flatMap((one) => one || []))}`;
}

/** How many of the `given` break tests count, as the verdict has it. */
export function testsTakenWords(
  { assessed, leftOut }: Pick<SandboxState["assessment"], "assessed" | "leftOut">,
  given: number,
): string {
  const { tests } = assessed.taken;
  if (tests) return words.say("taken.tests", tests);
  return sayWear(leftOut ? "takeDownPart.testsLeftOut" : "takeDownPart.testsNotCounted", { given });
}

/** The take-down date as a calendar draws it: the day since 1970, and a few words. */
export function takeDownMark(
  outlook: Outlook | undefined,
): { readonly day: number; readonly words: string } | undefined {
  const [day, short] = [dayOf(outlook?.date), outlook && untilWords.short(outlook)];
  return day === undefined || short === undefined ? undefined : { day, words: short };
}
