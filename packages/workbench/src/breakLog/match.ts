/** Which column of somebody's table is which of a break log: as suggested, as chosen, and as it is kept in a file. */
import { GENERIC_STOCKS, unitsOf } from "@secondline/rig";
import { columnName, LOG_COLUMNS, type LogColumn, OUTCOMES, REQUIRED_COLUMNS } from "@secondline/strength";
import * as z from "zod";
import { DATE_ORDERS, onlyDateOrder } from "./dateOrder.ts";
import type { LogTable } from "./logTable.ts";

/** Where a column of the log comes from: one of the table, or a text that stands for every row. */
const source = z.union([z.strictObject({ column: z.string() }), z.strictObject({ same: z.string() })]);

/** One entry for every column of a log; each entry may be left out. */
const byColumn = <T extends z.ZodType>(schema: T) =>
  z.strictObject(
    Object.fromEntries(LOG_COLUMNS.map((column) => [column, schema.optional()])) as Record<LogColumn, z.ZodOptional<T>>,
  );

/** What the user has said of a table. Words of its cells are given in the log's words, by column. */
export const columnMatchSchema = z.strictObject({
  secondline: z.literal("columns/1"),
  columns: byColumn(source),
  words: byColumn(z.array(z.strictObject({ text: z.string(), means: z.string() }))),
  dates: z.enum(DATE_ORDERS),
});
export type ColumnMatch = z.infer<typeof columnMatchSchema>;
export type ColumnSource = z.infer<typeof source>;

export const NO_MATCH: ColumnMatch = { secondline: "columns/1", columns: {}, words: {}, dates: "ymd" };

/** Columns whose cells must be one of a few words. */
export const WORD_COLUMNS = ["outcome", "wet"] as const;
export type WordColumn = (typeof WORD_COLUMNS)[number];
export const KNOWN_WORDS: Readonly<Record<WordColumn, readonly string[]>> = {
  outcome: OUTCOMES,
  wet: ["dry", "wet"],
};

/** Names under which a column is often found, without case, spaces and marks. Loads have no unit here: it is asked. */
const USUAL_COLUMN_NAMES: Readonly<Partial<Record<LogColumn, readonly string[]>>> = {
  date: ["date", "day", "testdate", "dateoftest"],
  part: ["part", "whatwaspulled", "item", "piece", "specimen", "sample"],
  material: ["material", "webbing", "rope", "product", "stock"],
  batch: ["batch", "lot", "serial"],
  state: ["state", "condition", "history"],
  wet: ["wet", "wetordry", "wetdry"],
  taken_from: ["takenfrom", "from", "origin", "where"],
  months_outside: ["monthsoutside", "months"],
  sun_months: ["sunmonths", "monthsofsun"],
  falls: ["falls", "numberoffalls"],
  clamped_months: ["clampedmonths", "monthsinclamp"],
  sewn_months: ["sewnmonths"],
  knot: ["knot"],
  outcome: ["outcome", "howitended", "ended"],
  result: [
    "result",
    "load",
    "force",
    "breakingload",
    "breakload",
    "breakingforce",
    "peak",
    "peakload",
    "max",
    "maxforce",
    "maxload",
    "strength",
  ],
  result_to: ["resultto", "to"],
  unit: ["unit", "units", "forceunit", "loadunit"],
  failure_mode: ["failuremode", "mode", "howitfailed"],
  failure_place: ["failureplace", "place", "wherebroken", "breakplace"],
  note: ["note", "notes", "remark", "remarks", "comment", "comments"],
};

const bare = (text: string): string => text.toLowerCase().replace(/[^a-z]/g, "");
const withoutUnit = (name: string): string => name.replace(/\s*[[(].*$/, "");

/** The unit that a column's own name states, such as "Load [lbf]"; undefined where it states none. */
export function statedUnit(name: string): string | undefined {
  const written = /[[(]\s*([A-Za-z]+)\s*[\])]\s*$/.exec(name)?.[1];
  return unitsOf("force").find((unit) => unit.toLowerCase() === written?.toLowerCase());
}

/** Columns with a usual name are matched; a unit only where the file states it. Nothing is taken of itself: whoever asked sees it first. */
export function suggestMatch(table: LogTable): ColumnMatch {
  const free = new Set(table.columns);
  const columns: Partial<Record<LogColumn, ColumnSource>> = {};
  for (const column of LOG_COLUMNS) {
    const name = [...free].find((one) => USUAL_COLUMN_NAMES[column]?.includes(bare(withoutUnit(one))));
    if (name === undefined) continue;
    free.delete(name);
    columns[column] = { column: name };
  }
  return asTheTableSays(table, { ...NO_MATCH, columns });
}

/** With what the table itself leaves no doubt of: a unit in the name of the loads' column, and the only order in which its dates are days. */
export function asTheTableSays(table: LogTable, match: ColumnMatch): ColumnMatch {
  const { result, unit, date } = match.columns;
  const stated = result && "column" in result ? statedUnit(result.column) : undefined;
  const order = date && "column" in date ? onlyDateOrder(cellsOf(table, date.column)) : undefined;
  return {
    ...match,
    columns: { ...match.columns, ...(!unit && stated ? { unit: { same: stated } } : {}) },
    dates: order ?? match.dates,
  };
}

/** Columns that the log cannot do without and that nothing was said of. */
export const missingColumns = ({ columns }: ColumnMatch): readonly LogColumn[] =>
  REQUIRED_COLUMNS.filter((column) => {
    const from = columns[column];
    return !from || ("same" in from && from.same.trim() === "");
  });

/** Different texts of a column whose words must be known, in the order in which they come, with what each means so far. */
export function wordsIn(
  table: LogTable,
  match: ColumnMatch,
  column: WordColumn | "material",
): readonly { readonly text: string; readonly means: string | undefined }[] {
  const from = match.columns[column];
  if (!from) return [];
  const cells = "same" in from ? [from.same] : cellsOf(table, from.column);
  return [...new Set(cells)]
    .filter((text) => text !== "")
    .map((text) => ({ text, means: meaning(match, column, text) }));
}

const cellsOf = (table: LogTable, name: string): readonly string[] => {
  const at = table.columns.indexOf(name);
  return at < 0 ? [] : table.rows.map(({ cells }) => cells[at]!);
};

/** What somebody chose that a text means; undefined where nothing was chosen. */
export const chosenWord = (match: ColumnMatch, column: LogColumn, text: string): string | undefined =>
  match.words[column]?.find((one) => one.text === text)?.means;

/** The match with another meaning of a text, or with none. */
export function withWord(match: ColumnMatch, column: LogColumn, text: string, means: string | undefined): ColumnMatch {
  const others = (match.words[column] ?? []).filter((one) => one.text !== text);
  const words = means === undefined ? others : [...others, { text, means }];
  return { ...match, words: { ...match.words, [column]: words } };
}

/** The meaning that was chosen, else the known meaning, else, for a material, the id of the stock of that name; undefined if unknown. */
export function meaning(match: ColumnMatch, column: LogColumn, text: string): string | undefined {
  const chosen = chosenWord(match, column, text);
  if (chosen !== undefined) return chosen;
  if (column === "material") return materialId(text) ?? text;
  if (column !== "outcome" && column !== "wet") return text;
  return KNOWN_WORDS[column].find((known) => known === text.toLowerCase());
}

/** The id of the webbing or rope of this name. */
function materialId(name: string): string | undefined {
  const plain = (text: string) =>
    text
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, " ")
      .trim();
  return [...GENERIC_STOCKS].find(([id, stock]) => plain(stock.name) === plain(name) || id === name)?.[0];
}

/** The table's own columns have other names than the log's: somebody must say which is which. */
export const isMatched = ({ columns }: LogTable): boolean =>
  REQUIRED_COLUMNS.every((one) => columns.some((name) => columnName(name) === one));
