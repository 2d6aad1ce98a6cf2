/** What is asked of one run. */
import type { Accuracy } from "@secondline/engine";
import type { WhatIf } from "../events/registry.ts";
import type { RunFacts } from "../facts/runFacts.ts";
import type { Draw } from "../scatter/draw.ts";

/** One run to be made. */
export interface RunOrder {
  readonly event: WhatIf;
  readonly draw: Draw;
  readonly accuracy: Accuracy;
  /** The run of `eventBefore(event)` under the same draw. */
  readonly before?: RunFacts;
  /** Keep thinned-out forces, for plots. */
  readonly trace?: boolean;
}
