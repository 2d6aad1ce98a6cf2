/** Reads one break test from its written fields: a line of a log, or a form. */

import { type FactsOf, type FactValue, type KnotKind, parseQuantity, rigFact } from "@secondline/rig";
import type { Observation } from "@secondline/statistics";
import { isDate } from "../dates/calendarDate.ts";
import { hiddenFaults } from "./hiddenFaults.ts";
import { type BreakTest, KNOT_KINDS, type LogColumn, type LogFault, OUTCOMES, type OutcomeWord } from "./logEntry.ts";
import { type LogFact, type LogFacts, logFact } from "./logFacts.ts";

export type WrittenTest = Readonly<Partial<Record<LogColumn, string>>>;
export type TestReading =
  | { readonly ok: true; readonly value: BreakTest }
  | { readonly ok: false; readonly faults: readonly LogFault[] };

/** `line` goes into the faults; 0 for a form. */
export function readTest(written: WrittenTest, line: number): TestReading {
  // Case does not count: "Broke" and "DRY" leave no doubt.
  const fields = withLowerCase(written, ["outcome", "wet"]);
  const faults = hiddenFaults(fields, line);
  const fault: Fault = (column, expected, message) => {
    faults.push({ line, column, got: `"${short(fields[column] ?? "")}"`, expected, message });
    return undefined;
  };
  const words = (column: LogColumn): string | undefined => fields[column] || undefined;
  const needed = (column: LogColumn): string =>
    words(column) ??
    fault(column, neededIn(column), logFact("cell.empty", { column, expected: neededIn(column) })) ??
    "";
  const count = (column: LogColumn): number | undefined => {
    const text = words(column);
    if (text === undefined) return undefined;
    const largest = MOST_IN_COLUMN[column] ?? MOST_MONTHS;
    const value = isPlainNumber(text) ? Number(text) : Number.NaN;
    if (value >= 0 && value <= largest) return value;
    const most = `${largest}`;
    return fault(
      column,
      logFact("expected.upTo", { most }),
      logFact("cell.number", { column, most, text: short(text) }),
    );
  };
  if (fields.date && !isDate(fields.date)) {
    fault("date", logFact("expected.calendarDate", {}), logFact("cell.date", { text: short(fields.date) }));
  }
  const wet = readWet(words("wet"), fault);
  const result = readResult(fields, fault);
  const months = count("months_outside");
  const sunMonths = count("sun_months");
  const falls = count("falls");
  const clampedMonths = count("clamped_months");
  const sewnMonths = count("sewn_months");
  const knot = readKnot(words("knot"), fault);
  const [part, material, state] = [needed("part"), needed("material"), needed("state")];
  if (faults.length > 0 || result === undefined || wet === undefined) return { ok: false, faults };
  // The fields are spelt out for speed: spreading an object and then adding to it takes forty times as long.
  const outcome = fields.outcome as OutcomeWord;
  const test: Writable<BreakTest> = { part, material, state, wet, outcome, result };
  if (fields.date) test.date = fields.date;
  if (fields.batch) test.batch = fields.batch;
  if (fields.taken_from) test.takenFrom = fields.taken_from;
  if (months !== undefined) test.monthsOutside = months;
  if (sunMonths !== undefined) test.sunMonths = sunMonths;
  if (falls !== undefined) test.falls = falls;
  if (clampedMonths !== undefined) test.clampedMonths = clampedMonths;
  if (sewnMonths !== undefined) test.sewnMonths = sewnMonths;
  if (knot !== undefined) test.knot = knot;
  if (fields.failure_mode) test.failureMode = fields.failure_mode;
  if (fields.failure_place) test.failurePlace = fields.failure_place;
  if (fields.note) test.note = fields.note;
  if (line !== 0) test.line = line;
  return { ok: true, value: test };
}

type Writable<T> = { -readonly [K in keyof T]: T[K] };

/** Copies only a row that has capitals: thousands of rows have none. */
function withLowerCase(fields: WrittenTest, columns: readonly LogColumn[]): WrittenTest {
  let lowered = fields;
  for (const column of columns) {
    const [text, small] = [fields[column], fields[column]?.toLowerCase()];
    if (small !== undefined && small !== text) lowered = { ...lowered, [column]: small };
  }
  return lowered;
}

/** Larger counts are slips of the pen: a hundred years in months, a million falls [-]. */
const MOST_MONTHS = 1200;
const MOST_IN_COLUMN: Partial<Record<LogColumn, number>> = { falls: 1e6 };
/** A load outside of this range is no webbing's, rope's or fitting's, but a slip in number or unit [N]. */
const LEAST_LOAD = 1;
const MOST_LOAD = 5e6;
/** No load in any unit is written by a smaller number [-]. */
const SMALLEST_NUMBER = 1e-12;
const PLAIN_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;
/** Nobody writes a longer number, and the pattern is slow on thousands of digits. */
const LONGEST_NUMBER = 40;
const isPlainNumber = (text: string): boolean => text.length <= LONGEST_NUMBER && PLAIN_NUMBER.test(text);

function neededIn(column: LogColumn): FactsOf<LogFacts> {
  switch (column) {
    case "part":
      return logFact("expected.partPulled", {});
    case "material":
    case "state":
      return logFact(`expected.${column}`, {});
    default:
      return logFact("expected.someText", {});
  }
}

/** A cell, shortened for a message that quotes it. */
const short = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}…` : text);

/** A knot by its name, whatever its capitals, spaces and hyphens. */
function readKnot(text: string | undefined, fault: Fault): KnotKind | undefined {
  if (text === undefined) return undefined;
  const bare = (name: string) => name.toLowerCase().replace(/[^a-z]/g, "");
  const known = KNOT_KINDS.find((name) => bare(name) === bare(text));
  const list = { list: KNOT_KINDS };
  return known ?? fault("knot", rigFact("expected.oneOf", { list }), logFact("cell.knot", { text: short(text), list }));
}

type Fault = (column: LogColumn, expected: FactValue, message: LogFact) => undefined;

function readWet(text: string | undefined, fault: Fault): boolean | undefined {
  if (text === "wet") return true;
  if (text === "dry") return false;
  return fault("wet", logFact("expected.wetOrDry", {}), logFact("cell.wet", { text: short(text ?? "") }));
}

function readResult(fields: WrittenTest, fault: Fault): Observation | undefined {
  const outcome = fields.outcome as OutcomeWord | undefined;
  const force = readForce(fields, "result", fault);
  const between = outcome === "broke between";
  const to = between ? readForce(fields, "result_to", fault) : undefined;
  if (outcome === undefined || !OUTCOMES.includes(outcome)) {
    const list = { list: OUTCOMES };
    const message = logFact("cell.outcome", { text: short(outcome ?? ""), list });
    return fault("outcome", logFact("expected.outcome", { list }), message);
  }
  if (!between && (fields.result_to ?? "") !== "") {
    return fault("result_to", logFact("expected.noUpperLoad", {}), logFact("cell.upperLoad", {}));
  }
  if (force === undefined) return undefined;
  if (between) {
    if (to === undefined) return undefined;
    if (to <= force) {
      return fault("result_to", logFact("expected.upperLoad", {}), logFact("cell.upperLoadSmaller", {}));
    }
    return { kind: "between", from: force, to };
  }
  const kind = outcome === "broke" ? "exact" : outcome === "broke below" ? "below" : "above";
  return { kind, value: force };
}

function readForce(fields: WrittenTest, column: "result" | "result_to", fault: Fault): number | undefined {
  const text = fields[column] ?? "";
  const unit = fields.unit ?? "";
  if (text === "") return fault(column, logFact("expected.load", {}), logFact("cell.noLoad", { column }));
  if (!isPlainNumber(text)) {
    const isComma = text.length <= LONGEST_NUMBER && /^[+-]?\d+,\d+$/.test(text);
    const message = logFact(isComma ? "cell.decimalComma" : "cell.noNumber", { text: short(text) });
    return fault(column, logFact("expected.decimalPoint", {}), message);
  }
  if (unit === "") {
    if (column !== "result") return undefined;
    return fault("unit", logFact("expected.units", {}), logFact("cell.noUnit", {}));
  }
  const range = { least: `${LEAST_LOAD} N`, most: `${MOST_LOAD / 1000} kN` };
  const outside = () =>
    fault(
      column,
      logFact("expected.loadFrom", range),
      logFact("cell.unlikelyLoad", { ...range, text: short(text), unit: short(unit) }),
    );
  // No load in any unit is so small, and some computers round it to 0.
  if (Number(text) !== 0 && Math.abs(Number(text)) < SMALLEST_NUMBER) return outside();
  const read = readUnit(unit);
  if (!read.ok || !Number.isFinite(Number(text))) {
    const refused = parseQuantity(`${text} ${unit}`, "force");
    if (refused.ok) return outside();
    const isUnit = Number.isFinite(Number(text)) && Number(text) < MOST_LOAD;
    return fault(isUnit ? "unit" : column, refused.expected, refused.message);
  }
  const load = Number(text) * read.value;
  if (load <= 0)
    return fault(column, logFact("expected.loadAboveZero", {}), logFact("cell.notPositive", { text, unit }));
  if (load < LEAST_LOAD || load > MOST_LOAD) return outside();
  // Twelve digits keep the number as written and drop the rounding of the unit's factor.
  return Number(load.toPrecision(12));
}

const READ_UNITS = new Map<string, ReturnType<typeof parseQuantity>>();
/** More spellings than all units of force have [-]. */
const MOST_UNITS = 50;

/** The size of a unit in newtons, kept: a log of thousands of rows has one unit. */
function readUnit(unit: string): ReturnType<typeof parseQuantity> {
  const known = READ_UNITS.get(unit);
  if (known !== undefined) return known;
  const read = parseQuantity(`1 ${unit}`, "force");
  if (READ_UNITS.size >= MOST_UNITS) READ_UNITS.clear();
  READ_UNITS.set(unit, read);
  return read;
}
