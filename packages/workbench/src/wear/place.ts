import { type Dimension, parseQuantity } from "@secondline/rig";
import type { WrittenEntry } from "../documents/documents.ts";

/** [m from the marked end] */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

const read = (written: unknown, dimension: Dimension = "length"): number | undefined => {
  if (typeof written !== "string" && typeof written !== "number") return undefined;
  const quantity = parseQuantity(written, dimension);
  return quantity.ok ? quantity.value : undefined;
};

/** Readings of the whole line: their "at" is the walker's share of the span, no place on the webbing. */
const READINGS: readonly string[] = ["tensionReading", "sagReading"];

/** Where an entry lies on the webbing, as far as what is written can be read [m from the marked end]. */
export function placeOf(entry: WrittenEntry): Stretch | undefined {
  if (READINGS.includes(entry.event)) return undefined;
  const spot = read(entry.at);
  if (spot !== undefined) {
    const half = (read(entry.length) ?? 0) / 2;
    return { from: spot - half, to: spot + half };
  }
  const [a, b] = [read(entry.from), read(entry.to)];
  return a === undefined || b === undefined ? undefined : { from: a, to: b };
}
