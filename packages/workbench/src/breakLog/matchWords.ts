/** What is asked and told while the columns of a file are matched with those of a break log. */
import { GENERIC_STOCKS, type LineStock, unitsOf } from "@secondline/rig";
import { type BreakTest, type LogColumn, type LogFact, REQUIRED_COLUMNS } from "@secondline/strength";
import { listed, quantity } from "@secondline/words";
import { columnLabel, sayColumns as say } from "@secondline/words/columns";
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
import { readMatched } from "./readMatched.ts";
import { loadOf, materialName } from "./testGroups.ts";

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
  readonly faults: readonly { readonly line: number; readonly column: string; readonly message: LogFact }[];
  readonly missing: readonly LogColumn[];
  readonly words: string;
}

/** What the table comes to, as it is matched so far. Faults of rows are told once every word is known. */
export function matchState(table: LogTable, match: ColumnMatch): MatchState {
  const missing = missingColumns(match);
  const nothing = { tests: undefined, faults: [], missing };
  const list = listed(missing.map((one) => columnLabel(one)));
  if (missing.length > 0) return { ...nothing, words: say("state.missing", { list }) };
  const reading = readMatched(table, match);
  const isUnknown = WORD_COLUMNS.some((column) =>
    wordsIn(table, match, column).some(({ means }) => means === undefined),
  );
  const tests = reading.ok ? reading.tests : undefined;
  if (isUnknown) return { ...nothing, tests, words: say("state.words") };
  if (reading.ok) return { ...nothing, tests, words: say("state.good", { count: reading.tests.length }) };
  const count = new Set(reading.faults.map(({ line }) => line)).size;
  return { ...nothing, faults: reading.faults, words: say("state.faults", { count }) };
}

const PREVIEWED_TESTS = 5;

export const PREVIEW_HEADS: readonly string[] = [
  ...(["date", "part", "material", "state", "wet", "outcome"] as const).map((column) => columnLabel(column)),
  say("preview.load"),
];

/** The first tests as they are read. */
export const previewRows = (tests: readonly BreakTest[], own?: readonly LineStock[]): readonly (readonly string[])[] =>
  tests
    .slice(0, PREVIEWED_TESTS)
    .map((test) => [
      test.date ?? "",
      test.part,
      materialName(test.material, own),
      test.state,
      sayBreakLog(test.wet ? "matchColumns.wet" : "matchColumns.dry"),
      test.outcome,
      quantity.strength(loadOf(test)),
    ]);
