/** The fields of one break test as they are typed, and what is wrong in them. */

import type { LogColumn, LogFault, WrittenTest } from "@secondline/strength";
import { tellLogFault } from "@secondline/words/logFaults";
import { sayBreakLog } from "@secondline/words/page/breakLog";

/** A fault names columns of the file; a form has labels. */
const LABELS: ReadonlyMap<string, string> = new Map<LogColumn, string>([
  ["result_to", sayBreakLog("useTestDraft.upperLoad")],
  ["result", sayBreakLog("useTestDraft.load")],
  ["months_outside", sayBreakLog("useTestDraft.monthsOutside")],
  ["sun_months", sayBreakLog("useTestDraft.monthsFullSun")],
  ["falls", sayBreakLog("useTestDraft.falls")],
  ["clamped_months", sayBreakLog("useTestDraft.monthsClamp")],
  ["sewn_months", sayBreakLog("useTestDraft.monthsStitchingHung")],
  ["knot", sayBreakLog("useTestDraft.knot")],
  ["part", sayBreakLog("useTestDraft.whatPulled")],
  ["material", sayBreakLog("useTestDraft.material")],
  ["state", sayBreakLog("useTestDraft.state")],
]);

const labelOf = (column: string): string => LABELS.get(column) ?? column;

/** An upper load goes with one way of ending only; what was typed for it is kept in case that is chosen again. */
export function tidyFields({ result_to, ...rest }: WrittenTest): WrittenTest {
  const counted = rest.outcome === "broke between" ? { ...rest, result_to: result_to ?? "" } : rest;
  return Object.fromEntries(Object.entries(counted).map(([key, value]) => [key, value?.trim()]));
}

/** A fault in the words of the form. */
export function faultInForm({ message }: LogFault): string {
  switch (message.code) {
    case "cell.upperLoadSmaller":
      return sayBreakLog("testFields.upperLoadFirst", { label: labelOf("result_to") });
    case "cell.upperLoad":
      return sayBreakLog("testFields.upperLoadOnly", { label: labelOf("result_to") });
    case "cell.noNumber":
      return sayBreakLog("testFields.noNumber", message.values);
    case "cell.empty":
    case "cell.number":
    case "cell.noLoad":
      return tellLogFault({ ...message, values: { ...message.values, column: labelOf(message.values.column) } });
    default:
      return tellLogFault(message);
  }
}
