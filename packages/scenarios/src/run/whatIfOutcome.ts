/** What one what-if says, from the run of the event itself. */
import type { Accuracy, Recording } from "@secondline/engine";
import type { EventClass } from "../events/eventKind.ts";
import type { WhatIf } from "../events/registry.ts";
import type { Catcher, GaveWay, LostBecause, Peaks, Trouble } from "../facts/runFacts.ts";
import type { Trace, TraceBand } from "../facts/trace.ts";

/** Key results of one what-if, from the run of the event itself. */
export interface WhatIfOutcome {
  readonly whatIf: WhatIf;
  readonly key: string;
  readonly class: EventClass;
  readonly ok: boolean;
  /** Why its numbers cannot be trusted, when not ok. */
  readonly trouble?: Trouble;
  readonly peaks?: Peaks;
  readonly drop?: number;
  /** Least height of the tie-in above the ground [m]; 0 or less: the walker hits it. */
  readonly clearance?: number;
  /** Least height of the feet of an upright walker above the ground [m]; 0 or less: they touch it. */
  readonly feetClearance?: number;
  readonly groundSpeed?: number;
  readonly caughtBy: Catcher;
  readonly lostBecause?: LostBecause;
  /** What holds the walker would have to carry more than 95 % of such lines and ends reach. */
  readonly tooMuch?: true;
  /** What parted besides what the event itself says. */
  readonly gaveWay: readonly GaveWay[];
  /** Whether it counts in the verdict, or only tells what would follow. */
  readonly counts: boolean;
  /** How many runs of the what-if were made, this one included. */
  readonly runs: number;
  readonly trace?: Trace;
  /** The band of the first draws, if traces were asked for and draws were made. */
  readonly band?: TraceBand;
}

/** A what-if with its recording, for the eye. */
export interface WhatIfRun {
  readonly outcome: WhatIfOutcome;
  readonly recording?: Recording;
  /** The peaks on another mesh, when they were asked for [N]. */
  readonly otherMesh?: { readonly accuracy: Accuracy; readonly peaks: Peaks };
}
