/** Reads one break test from its written fields: a line of a log, or a form. */
import { parseQuantity } from "@secondline/rig";
import { readDate } from "../dates/calendarDate.ts";
import type { Observation } from "../statistics/observation.ts";
import { type BreakTest, type LogColumn, type LogFault, OUTCOMES, type OutcomeWord } from "./breakTest.ts";
import { hiddenFaults } from "./hiddenFaults.ts";

export type TestFields = Readonly<Partial<Record<LogColumn, string>>>;
export type TestReading =
  | { readonly ok: true; readonly value: BreakTest }
  | { readonly ok: false; readonly faults: readonly LogFault[] };

/** `line` goes into the faults; 0 for a form. */
export function readTest(written: TestFields, line: number): TestReading {
  // "Broke" and "DRY" leave no doubt.
  const fields: TestFields = { ...written, ...lowered(written, "outcome"), ...lowered(written, "wet") };
  const faults = hiddenFaults(fields, line);
  const fault = (column: LogColumn, expected: string, message: string): undefined => {
    faults.push({ line, column, got: `"${fields[column] ?? ""}"`, expected, message });
    return undefined;
  };
  const words = (column: LogColumn): string | undefined => fields[column] || undefined;
  const needed = (column: LogColumn): string =>
    words(column) ?? fault(column, "some text", `${column} is empty.`) ?? "";
  const count = (column: LogColumn): number | undefined => {
    const text = words(column);
    if (text === undefined) return undefined;
    const value = Number(text);
    if (Number.isFinite(value) && value >= 0) return value;
    return fault(column, "a number from 0", `${column} must be a number from 0, not "${text}".`);
  };
  const dateText = words("date");
  if (dateText !== undefined && readDate(dateText) === undefined) {
    fault("date", "a calendar date YYYY-MM-DD", `"${dateText}" is not a date such as 2026-05-31.`);
  }
  const wet = readWet(words("wet"), fault);
  const result = readResult(fields, fault);
  const months = count("months_outside");
  const sunMonths = count("sun_months");
  const falls = count("falls");
  const texts = { part: needed("part"), material: needed("material"), state: needed("state") };
  if (faults.length > 0 || result === undefined || wet === undefined) return { ok: false, faults };
  const optional = {
    date: dateText,
    batch: words("batch"),
    takenFrom: words("taken_from"),
    monthsOutside: months,
    sunMonths,
    falls,
    failureMode: words("failure_mode"),
    failurePlace: words("failure_place"),
    note: words("note"),
    line: line === 0 ? undefined : line,
  };
  const given = Object.fromEntries(Object.entries(optional).filter(([, value]) => value !== undefined));
  return { ok: true, value: { ...texts, wet, outcome: fields.outcome as OutcomeWord, result, ...given } };
}

function lowered(fields: TestFields, column: "outcome" | "wet"): TestFields {
  return fields[column] === undefined ? {} : { [column]: fields[column].toLowerCase() };
}

type Fault = (column: LogColumn, expected: string, message: string) => undefined;

function readWet(text: string | undefined, fault: Fault): boolean | undefined {
  if (text === "wet") return true;
  if (text === "dry") return false;
  return fault("wet", "wet or dry", `Write wet or dry, not "${text ?? ""}".`);
}

function readResult(fields: TestFields, fault: Fault): Observation | undefined {
  const outcome = fields.outcome as OutcomeWord | undefined;
  const force = readForce(fields, "result", fault);
  const between = outcome === "broke between";
  const to = between ? readForce(fields, "result_to", fault) : undefined;
  if (outcome === undefined || !OUTCOMES.includes(outcome)) {
    return fault("outcome", OUTCOMES.join(", "), `"${outcome ?? ""}" is not one of ${OUTCOMES.join(", ")}.`);
  }
  if (!between && (fields.result_to ?? "") !== "") {
    return fault(
      "result_to",
      "nothing, unless it broke between two loads",
      `result_to goes with "broke between" only.`,
    );
  }
  if (force === undefined) return undefined;
  if (between) {
    if (to === undefined) return undefined;
    if (to <= force) return fault("result_to", "more than result", "result_to must be larger than result.");
    return { kind: "between", from: force, to };
  }
  const kind = outcome === "broke" ? "exact" : outcome === "broke below" ? "below" : "above";
  return { kind, value: force };
}

function readForce(fields: TestFields, column: "result" | "result_to", fault: Fault): number | undefined {
  const text = fields[column] ?? "";
  const unit = fields.unit ?? "";
  if (text === "") return fault(column, "a load", `${column} is empty.`);
  if (!/^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/.test(text)) {
    return fault(
      column,
      "a number with a decimal point",
      /^[+-]?\d+,\d+$/.test(text)
        ? `"${text}" has a decimal comma; commas part the cells of this file, so write a point.`
        : `"${text}" is not a number; the unit goes into its own column.`,
    );
  }
  if (unit === "") return column === "result" ? fault("unit", "kN, N, lbf …", "The unit is empty.") : undefined;
  const read = parseQuantity(`${text} ${unit}`, "force");
  if (!read.ok) return fault(column === "result" ? "unit" : column, read.expected, read.message);
  if (read.value <= 0) return fault(column, "a load above 0", `A breaking load must be above 0, not ${text} ${unit}.`);
  // Twelve digits: what was written, without the rounding of the unit's factor.
  return Number(read.value.toPrecision(12));
}
