/** Reads the events that `--what-if` names, and sees that the rig has them. */
import { type Rig, visibleText } from "@secondline/rig";
import { missingIn, parseWhatIf, type WhatIf } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { sayOptions } from "@secondline/words/terminal/options";
import { CommandFailure, EXIT } from "./failure.ts";

export function readWhatIf(text: string): WhatIf {
  const whatIf = parseWhatIf(text);
  if (whatIf) return whatIf;
  throw new CommandFailure(EXIT.input, sayOptions("whatIf.refused", { got: visibleText(text) }).split("\n"));
}

/** Refuses events that a rig does not have, before anything is computed. */
export function checkWhatIfs(rig: Rig, whatIfs: readonly WhatIf[]): void {
  const missing = whatIfs.flatMap((one) => missingIn(one, rig) ?? []);
  if (missing.length === 0) return;
  throw new CommandFailure(
    EXIT.input,
    missing.map((what) => `--what-if: ${words.phrase(rig, what)}`),
  );
}
