/** Values of a lesson's slider and its results, in words. */
import type { Scale } from "./lessons.ts";
import { say } from "./words.ts";

/** A value in the scale's own unit, with no more digits than it deserves. */
export function scaleWords(value: number, { unit }: Scale): string {
  const digits = unit === "kmh" || (unit === "m" && value >= 20) ? 0 : 1;
  return say(`unit.${unit}`, { value: String(Number(value.toFixed(digits))) });
}

/** An SI value in the scale's unit. */
export const onScale = (value: number, { size }: Scale): number => value / size;
