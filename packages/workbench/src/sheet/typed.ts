/** Quantities of the sheet as they are typed and slid. */
import { acceptsNumber, type QuantityField } from "@secondline/rig";

/** Dimensions without a unit are numbers in the file; what is no number is kept as typed, for its message. */
export function typedQuantity(
  text: string,
  { dimension }: Pick<QuantityField, "dimension">,
): string | number | undefined {
  if (text.trim() === "") return undefined;
  const number = Number(text);
  return acceptsNumber(dimension) && Number.isFinite(number) ? number : text;
}

/** About a hundred steps over the range, in round numbers. */
export function roundStep([low, high]: readonly [number, number]): number {
  const rough = (high - low) / 100;
  const power = 10 ** Math.floor(Math.log10(rough));
  const digit = rough / power;
  return power * (digit < 1.5 ? 1 : digit < 3.5 ? 2 : digit < 7.5 ? 5 : 10);
}
