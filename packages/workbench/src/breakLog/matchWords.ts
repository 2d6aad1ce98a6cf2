/** What is asked and told while the columns of a file are matched with those of a break log. */
import { GENERIC_STOCKS, type LineStock, unitsOf } from "@secondline/rig";
import { type BreakTest, type LogColumn, type LogFault, REQUIRED_COLUMNS } from "@secondline/strength";
import { listed, materialName, quantity } from "@secondline/words";
import { columnLabel, sayColumns as say } from "@secondline/words/columns";
import { dayText } from "@secondline/words/dates";
import { tellLogFault } from "@secondline/words/logFaults";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import type { LogTable } from "./logTable.ts";
import {
  asTheTableSays,
  type ColumnMatch,
  type ColumnSource,
  chosenWord,
  KNOWN_WORDS,
  missingColumns,
  statedUnit,
  WORD_COLUMNS,
  type WordColumn,
  wordsIn,
} from "./match.ts";
import { cellOf, readMatched } from "./readMatched.ts";
import { loadOf } from "./testGroups.ts";

interface Option {
  readonly value: string;
  readonly label: string;
}

const NO_COLUMN = " none";
const SAME_FOR_ALL = " same";
const same = (words: readonly string[]): readonly Option[] => words.map((word) => ({ value: word, label: word }));

export interface SourceChoice {
  readonly label: string;
  readonly value: string;
  readonly options: readonly Option[];
  /** The log needs the column, and the user has not said where it comes from. */
  readonly isMissing: boolean;
}

/** Where a column of the log comes from, to be chosen. */
export function sourceChoice(table: LogTable, { columns }: ColumnMatch, column: LogColumn): SourceChoice {
  const from = columns[column];
  const isNeeded = REQUIRED_COLUMNS.includes(column);
  return {
    label: isNeeded ? `${columnLabel(column)}, ${say("needed")}` : columnLabel(column),
    value: !from ? NO_COLUMN : "same" in from ? SAME_FOR_ALL : from.column,
    options: [
      { value: NO_COLUMN, label: say("source.none") },
      { value: SAME_FOR_ALL, label: say("source.same") },
      ...same(table.columns),
    ],
    isMissing: isNeeded && !from,
  };
}

/** The match after a choice of the column's source. */
export function withSource(table: LogTable, match: ColumnMatch, column: LogColumn, value: string): ColumnMatch {
  const before = match.columns[column];
  const others = { ...match.columns };
  delete others[column];
  // A unit that the name of the loads' column stated goes with that column.
  if (column === "result" && before && isStatedBy(before, others.unit)) delete others.unit;
  if (value === NO_COLUMN) return { ...match, columns: others };
  const columns = { ...others, [column]: value === SAME_FOR_ALL ? { same: "" } : { column: value } };
  return column === "result" || column === "date"
    ? asTheTableSays(table, { ...match, columns })
    : { ...match, columns };
}

const isStatedBy = (loads: ColumnSource, unit: ColumnSource | undefined): boolean =>
  "column" in loads && unit !== undefined && "same" in unit && unit.same === statedUnit(loads.column);

/** What can stand for every row of a column; undefined where it is typed. */
export function sameOptions(column: LogColumn): readonly Option[] | undefined {
  const known =
    column === "unit" ? unitsOf("force") : column === "outcome" || column === "wet" ? KNOWN_WORDS[column] : undefined;
  return known && [{ value: "", label: say("unit.choose") }, ...same(known)];
}

export interface WordChoice extends SourceChoiceOf {
  readonly column: WordColumn | "material";
  readonly text: string;
}
type SourceChoiceOf = Pick<SourceChoice, "label" | "value" | "options">;

/** Words of the file that mean one of few, and that nobody knows or that somebody chose. */
export const strangeWords = (table: LogTable, match: ColumnMatch): readonly WordChoice[] =>
  WORD_COLUMNS.flatMap((column) =>
    wordsIn(table, match, column)
      .filter(({ text, means }) => means === undefined || chosenWord(match, column, text) !== undefined)
      .map(({ text, means }) => ({
        column,
        text,
        label: say("words.label", { text, column: columnLabel(column) }),
        value: means ?? "",
        options: [{ value: "", label: say("words.choose") }, ...same(KNOWN_WORDS[column])],
      })),
  );

/** Materials of the file, which may have another name in a rig. `own`: webbings and ropes of the open rig, which stand first. */
export function materialWords(
  table: LogTable,
  match: ColumnMatch,
  own: readonly LineStock[] = [],
): readonly WordChoice[] {
  const ids = [...new Set([...own.map(({ id }) => id), ...GENERIC_STOCKS.keys()])];
  return wordsIn(table, match, "material").map(({ text, means }) => ({
    column: "material",
    text,
    label: text,
    value: means !== undefined && ids.includes(means) ? means : "",
    options: [
      { value: "", label: say("material.asIs", { text }) },
      ...ids.map((id) => ({ value: id, label: materialName(id, own) })),
    ],
  }));
}

export interface MatchState {
  readonly tests: readonly BreakTest[] | undefined;
  /** The rows in the order of the file: as they are read, or as they stand there, with what is wrong. */
  readonly rows: readonly ShownRow[];
  /** Bad rows beyond those that are shown. */
  readonly moreBad: number;
  /** Faults of no row. */
  readonly elsewhere: readonly LogFault[];
  readonly missing: readonly LogColumn[];
  readonly words: string;
}

interface ShownRow {
  readonly line: number;
  readonly as: { readonly test: BreakTest } | { readonly cells: readonly string[]; readonly wrong: readonly string[] };
}

/** Rows that are shown [-]. */
const SHOWN_TESTS = 5;
const SHOWN_BAD_ROWS = 10;

/** What the table comes to, as it is matched so far. A single bad row keeps every row from being taken. */
export function matchState(table: LogTable, match: ColumnMatch): MatchState {
  const missing = missingColumns(match);
  const nothing = { tests: undefined, rows: [], moreBad: 0, elsewhere: [], missing };
  const list = listed(missing.map((one) => columnLabel(one)));
  if (missing.length > 0) return { ...nothing, words: say("state.missing", { list }) };
  const reading = readMatched(table, match);
  if (reading.ok) {
    const { tests } = reading;
    return { ...nothing, tests, rows: rowsOf(tests), words: say("state.good", { count: tests.length }) };
  }
  const { faults, readable = [] } = reading;
  const good = new Set(readable.map(({ line }) => line));
  const bad = table.rows.filter(({ line }) => !good.has(line));
  const unknown = WORD_COLUMNS.map((column) => ({ column, words: unknownWords(table, match, column) }));
  const shown = bad.slice(0, SHOWN_BAD_ROWS).map((row): ShownRow => badRow({ table, match, faults, unknown }, row));
  const isUnknown = unknown.some(({ words }) => words.length > 0);
  const lines = new Set(table.rows.map(({ line }) => line));
  return {
    ...nothing,
    rows: [...rowsOf(readable), ...shown].sort((a, b) => a.line - b.line),
    moreBad: bad.length - shown.length,
    elsewhere: faults.filter(({ line }) => !lines.has(line)),
    words: say(isUnknown ? "state.words" : "state.faults", { count: bad.length, rows: table.rows.length }),
  };
}

const rowsOf = (tests: readonly BreakTest[]): readonly ShownRow[] =>
  tests.slice(0, SHOWN_TESTS).map((test) => ({ line: test.line ?? 0, as: { test } }));

const unknownWords = (table: LogTable, match: ColumnMatch, column: WordColumn): readonly string[] =>
  wordsIn(table, match, column)
    .filter(({ means }) => means === undefined)
    .map(({ text }) => text);

const PREVIEWED = ["date", "part", "material", "state", "wet", "outcome", "result"] as const;

/** The column's name in the user's own table. */
function nameOf({ columns }: ColumnMatch, column: LogColumn): string {
  const from = columns[column];
  return from && "column" in from ? from.column : column;
}

interface BadFile {
  readonly table: LogTable;
  readonly match: ColumnMatch;
  readonly faults: readonly LogFault[];
  /** Words that are still asked about, by column. */
  readonly unknown: readonly { readonly column: WordColumn; readonly words: readonly string[] }[];
}

/** A row as it stands in the file. A word that is still asked about is not wrong yet. */
function badRow({ table, match, faults, unknown }: BadFile, { line, cells }: LogTable["rows"][number]): ShownRow {
  const isAsked = unknown.some(({ column, words }) => words.includes(cellOf(table, match, column, cells)));
  const asked = unknown.map(({ column }) => nameOf(match, column));
  const told = faults
    .filter((fault) => fault.line === line && !(isAsked && asked.includes(fault.column)))
    .map(({ column, message }) => {
      const text = tellLogFault(message);
      return column === "" ? text : say("fault.row", { column, message: text });
    });
  return {
    line,
    as: {
      cells: PREVIEWED.map((column) => cellOf(table, match, column, cells)),
      // Of very many faults of a file the last ones are not told one by one.
      wrong: isAsked ? [say("fault.word"), ...told] : told.length > 0 ? told : [say("fault.likewise")],
    },
  };
}

/** The heads of the preview; with bad rows it has a column for what is wrong. */
export const previewHeads = ({ rows }: Pick<MatchState, "rows">): readonly string[] => [
  say("preview.line"),
  ...PREVIEWED.map((column) => (column === "result" ? say("preview.load") : columnLabel(column))),
  ...(rows.some(isBad) ? [say("preview.wrong")] : []),
];

const isBad = ({ as }: ShownRow): boolean => "wrong" in as;

/** The rows cell by cell; `bad`: the row stands there as in the file, and its last cell says what is wrong. */
export function previewRows(
  { rows }: Pick<MatchState, "rows">,
  own?: readonly LineStock[],
): readonly { readonly bad: boolean; readonly cells: readonly string[] }[] {
  const hasBad = rows.some(isBad);
  return rows.map(({ line, as }) => ({
    bad: "wrong" in as,
    cells:
      "wrong" in as
        ? [`✕ ${line}`, ...as.cells, as.wrong.join(" ")]
        : [`${line}`, ...testCells(as.test, own), ...(hasBad ? [""] : [])],
  }));
}

const testCells = (test: BreakTest, own?: readonly LineStock[]): readonly string[] => [
  test.date === undefined ? "" : dayText(test.date),
  test.part,
  materialName(test.material, own),
  test.state,
  sayBreakLog(test.wet ? "matchColumns.wet" : "matchColumns.dry"),
  test.outcome,
  quantity.strength(loadOf(test)),
];
