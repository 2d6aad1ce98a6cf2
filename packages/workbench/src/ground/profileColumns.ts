/** Which columns of a surveyor's table are the distance along the line and the height of the ground. */
import type { FileColumn } from "../tables/readTable.ts";

export const METRES = /^(?:m|metre|metres|meter|meters)$/i;
export const FOOT = /^(?:ft|foot|feet|['\u2032])$/i;
/** Lengths that a surveyor's table may be in and this reader does not take. */
export const OTHER_LENGTH_UNIT = /^(?:mm|cm|dm|km|in|inch|inches|yd|yard|yards|mi|mile|miles|["\u2033])$/i;

/** Places in the table, from 0. */
export interface ProfileColumns {
  readonly distance: number;
  readonly height: number;
}

export type ColumnsFault =
  | { readonly kind: "columns"; readonly row: number; readonly count: number }
  | { readonly kind: "severalColumns"; readonly first: string; readonly second: string };

const DISTANCE_NAME = /^(?:distance|dist|chainage|station|along|x)\b/i;
const SIDEWAYS_NAME = /^y\b/i;
const HEIGHT_NAME = /^(?:height|elevation|level|ground|z)\b/i;

/**
 * By their names, if one column is called a distance and one a height. Else the only two columns, or the only two that are lengths by
 * their units, in this order. A survey in three directions is not guessed at.
 */
export function profileColumns(columns: readonly FileColumn[]): ProfileColumns | ColumnsFault {
  const named = (pattern: RegExp) => placesOf(columns, ({ name }) => pattern.test(name));
  const [distances, heights] = [named(DISTANCE_NAME), named(HEIGHT_NAME)];
  if (distances.length === 1 && heights.length === 1 && named(SIDEWAYS_NAME).length === 0)
    return { distance: distances[0]!, height: heights[0]! };
  if (columns.length <= 2) return { distance: 0, height: 1 };
  const lengths = placesOf(columns, ({ unit }) => [METRES, FOOT, OTHER_LENGTH_UNIT].some((one) => one.test(unit)));
  if (lengths.length === 2) return { distance: lengths[0]!, height: lengths[1]! };
  const [first, second] = lengths.slice(-2).map((at) => columns[at]!.name);
  return first !== undefined && second !== undefined
    ? { kind: "severalColumns", first, second }
    : { kind: "columns", row: 1, count: columns.length };
}

const placesOf = (columns: readonly FileColumn[], is: (column: FileColumn) => boolean): readonly number[] =>
  columns.flatMap((column, at) => (is(column) ? [at] : []));
