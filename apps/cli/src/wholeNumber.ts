/** Options that are whole numbers. */
import { sayOptions } from "@secondline/words/terminal/options";
import { CommandFailure, EXIT } from "./failure.ts";

/** Undefined when the option was not given; anything else than a whole number of the range is refused. */
export function readWhole(option: string, text: string | undefined, least: number, most: number): number | undefined {
  if (text === undefined) return undefined;
  const value = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (value >= least && value <= most) return value;
  throw new CommandFailure(EXIT.input, [sayOptions("wholeNumber", { option, got: text, least, most })]);
}
