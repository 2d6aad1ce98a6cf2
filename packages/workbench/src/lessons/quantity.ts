/** Values of a lesson's slider and its results, in words. */
import { quantity } from "@secondline/words";
import type { SliderScale } from "./lessons.ts";

/** A number of the learner's own, as it was chosen: nobody's load or strength, so nothing is rounded. */
export function saidWords(value: number, { unit }: SliderScale): string {
  return `${quantity.number(Number(value.toFixed(1)))} ${unit === "kmh" ? "km/h" : unit}`;
}

/** A result in the scale's own unit, as the sentences beside it write it. */
export function lessonResultWords(value: number, { size, quantity: kind }: SliderScale): string {
  const result = value * size;
  switch (kind) {
    case "load":
      return quantity.load(result);
    case "strength":
      return quantity.strength(result);
    case "drop":
      return quantity.drop(result);
    case "slack":
      return `${quantity.rounded(result, 1, "down")} %`;
    case "speed":
      return quantity.kilometresPerHour(result);
  }
}

/** An SI value in the scale's unit. */
export const onScale = (value: number, { size }: SliderScale): number => value / size;
