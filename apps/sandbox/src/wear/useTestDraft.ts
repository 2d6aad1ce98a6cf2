/** The fields of one break test while they are typed, and what is wrong in them. */

import { type BreakTest, type LogColumn, readTest, type TestFields } from "@secondline/strength";
import { faultInForm, tidyFields } from "@secondline/workbench";
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

export function useTestDraft(initial: () => TestFields): TestDraft {
  const [fields, setFields] = useState(initial);
  const [touched, setTouched] = useState<ReadonlySet<LogColumn> | "all">(new Set());
  const reading = readTest(tidyFields(fields), 0);
  const faults = reading.ok ? [] : reading.faults;
  return {
    fields,
    put(column, value) {
      setFields({ ...fields, [column]: value });
      if (touched !== "all") setTouched(new Set([...touched, column]));
    },
    messages: (column) =>
      touched === "all" || touched.has(column)
        ? faults.filter((fault) => fault.column === column).map(faultInForm)
        : [],
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
