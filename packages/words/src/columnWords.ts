/** Words for matching the columns of a table with those of a break log. */
import type { LogColumn } from "@secondline/strength";
import { COLUMNS_ENGLISH, type ColumnsKey } from "./columnsEnglish.ts";
import { filled, type Values } from "./language.ts";

export type { ColumnsKey } from "./columnsEnglish.ts";

export const sayColumns = (key: ColumnsKey, values: Values = {}): string => filled(COLUMNS_ENGLISH[key], values);

export const columnLabel = (column: LogColumn): string => sayColumns(`column.${column}`);

/** Remark above the column names in an empty log. */
export const templateRemarks = (): readonly string[] =>
  (["template.1", "template.2", "template.3", "template.4", "template.5"] as const).map((key) => sayColumns(key));
