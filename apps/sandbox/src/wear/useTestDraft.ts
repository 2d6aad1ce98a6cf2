/** The fields of one break test while they are typed, and what is wrong in them. */

import { type BreakTest, type LogColumn, type LogFault, readTest, type TestFields } from "@secondline/strength";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { useState } from "react";

export interface TestDraft {
  readonly fields: TestFields;
  readonly put: (column: LogColumn, value: string) => void;
  /** Faults of a field that was typed in, or of any after a try to keep the test. */
  readonly messages: (column: LogColumn) => string[];
  /** The test, if every field is right; otherwise all faults come into sight. */
  readonly read: () => BreakTest | undefined;
  readonly faults: number;
  readonly reset: (fields: TestFields) => void;
}

/** A fault names columns of the file; a form has labels. */
const LABELS: readonly (readonly [LogColumn, string])[] = [
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
];

export function useTestDraft(initial: () => TestFields): TestDraft {
  const [fields, setFields] = useState(initial);
  const [touched, setTouched] = useState<ReadonlySet<LogColumn> | "all">(new Set());
  const reading = readTest(tidy(fields), 0);
  const faults = reading.ok ? [] : reading.faults;
  return {
    fields,
    put(column, value) {
      setFields({ ...fields, [column]: value });
      if (touched !== "all") setTouched(new Set([...touched, column]));
    },
    messages: (column) =>
      touched === "all" || touched.has(column) ? faults.filter((fault) => fault.column === column).map(formWords) : [],
    read() {
      if (!reading.ok) setTouched("all");
      return reading.ok ? reading.value : undefined;
    },
    faults: faults.length,
    reset(next) {
      setFields(next);
      setTouched(new Set());
    },
  };
}

/** An upper load goes with one way of ending only; what was typed for it is kept in case that is chosen again. */
function tidy({ result_to, ...rest }: TestFields): TestFields {
  const counted = rest.outcome === "broke between" ? { ...rest, result_to: result_to ?? "" } : rest;
  return Object.fromEntries(Object.entries(counted).map(([key, value]) => [key, value?.trim()]));
}

function formWords({ message }: LogFault): string {
  const [column, label] = LABELS.find(([name]) => message.startsWith(`${name} `)) ?? ["", ""];
  const words = column === "" ? message : `${label}${message.slice(column.length)}`;
  return words.replace(/ than result\.$/, " than the lower one.").replace("its own column", "its own field");
}
