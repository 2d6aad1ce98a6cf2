/** Writes a break log that `readBreakLog` reads back. */
import Papa from "papaparse";
import { type BreakTest, LOG_COLUMNS, type LogColumn } from "./logEntry.ts";

/**
 * CSV with every column, loads in kilonewtons, marked as invented if any test is. A cell that a spreadsheet would compute
 * begins with an apostrophe; the reader takes the apostrophe off again.
 */
export function writeBreakLog(tests: readonly BreakTest[]): string {
  const data = tests.map((test) => {
    const fields = testFields(test);
    return LOG_COLUMNS.map((column) => fields[column]);
  });
  const mark = tests.some(({ invented }) => invented) ? "# Invented: nothing in it was ever pulled.\n" : "";
  return `${mark}${Papa.unparse({ fields: [...LOG_COLUMNS], data }, { newline: "\n", escapeFormulae: true })}\n`;
}

/** A test as a row that `readTest` reads back, with its load in kilonewtons. */
export function testFields(test: BreakTest): Record<LogColumn, string> {
  const { result } = test;
  const kilonewtons = (newtons: number) => String(Number((newtons / 1000).toPrecision(12)));
  const number = (value: number | undefined) => (value === undefined ? "" : String(value));
  return {
    date: test.date ?? "",
    part: test.part,
    material: test.material,
    batch: test.batch ?? "",
    state: test.state,
    wet: test.wet ? "wet" : "dry",
    taken_from: test.takenFrom ?? "",
    months_outside: number(test.monthsOutside),
    sun_months: number(test.sunMonths),
    falls: number(test.falls),
    clamped_months: number(test.clampedMonths),
    sewn_months: number(test.sewnMonths),
    knot: test.knot ?? "",
    outcome: test.outcome,
    result: kilonewtons(result.kind === "between" ? result.from : result.value),
    result_to: result.kind === "between" ? kilonewtons(result.to) : "",
    unit: "kN",
    failure_mode: test.failureMode ?? "",
    failure_place: test.failurePlace ?? "",
    note: test.note ?? "",
  };
}
