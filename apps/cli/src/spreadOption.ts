/** `--spread`: how far an input may be off, in place of the assumed spread. */

import { INPUT_IDS, type InputId, MOST_SPREAD, type Spreads } from "@secondline/scenarios";
import { listed } from "@secondline/words";
import { sayOptions } from "@secondline/words/terminal/options";
import { CommandFailure, EXIT } from "./failure.ts";

/** "mass=5 %" or "mass=0.05". */
export function readSpreadOptions(texts: readonly string[]): Spreads {
  return Object.fromEntries(texts.map(readSpread));
}

function readSpread(text: string): [InputId, number] {
  const parts = /^(\w+)=(\d*\.?\d+)\s*(%?)$/.exec(text);
  const id = INPUT_IDS.find((one) => one === parts?.[1]);
  const value = parts ? Number(parts[2]) / (parts[3] === "%" ? 100 : 1) : Number.NaN;
  if (id && value <= MOST_SPREAD) return [id, value];
  throw new CommandFailure(EXIT.input, [
    sayOptions("spread.refused", { got: text }),
    sayOptions("spread.inputs", { inputs: listed(INPUT_IDS) }),
  ]);
}
