/** Reads the events that `--what-if` names, and sees that the rig has them. */
import type { Rig } from "@secondline/rig";
import { missingIn, parseWhatIf, type WhatIf } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { CommandFailure, EXIT } from "./failure.ts";

export function readWhatIf(text: string): WhatIf {
  const whatIf = parseWhatIf(text);
  if (whatIf) return whatIf;
  throw new CommandFailure(EXIT.input, [
    `--what-if: got "${text}"; expected fall@PLACE, fails@PLACE,WALKER@PLACE or leg@LEG,WALKER@PLACE, WALKER being hanging, standing (not with a leg) or`,
    "caught, PLACE a fraction of the line (0 at anchor A, 1 at anchor B) and LEG such as A1. The walker must be between the anchors. Example: fails@0,hanging@0.5",
  ]);
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
