/** Reads the event that `--what-if` names. */
import { parseWhatIf, type WhatIf } from "@secondline/scenarios";
import { CommandFailure, EXIT } from "./failure.ts";

export function readWhatIf(text: string): WhatIf {
  const whatIf = parseWhatIf(text);
  if (whatIf) return whatIf;
  throw new CommandFailure(EXIT.input, [
    `--what-if: got "${text}"; expected fall@PLACE, fails@PLACE,WALKER@PLACE or leg@LEG,WALKER@PLACE, WALKER being hanging, standing (not with a leg) or`,
    "caught, PLACE a fraction of the line (0 at anchor A, 1 at anchor B) and LEG such as A1. The walker must be between the anchors. Example: fails@0,hanging@0.5",
  ]);
}
