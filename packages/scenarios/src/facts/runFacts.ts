/** What one run has to say, small enough to be sent between threads and kept: the search decides on nothing else. */
import type { Recording } from "@secondline/engine";
import type { PartId } from "@secondline/rig";
import type { Phrase } from "./phrase.ts";
import type { Trace } from "./trace.ts";

/** What holds the walker after all that gave way has given way. "remains": both lines parted, and what is left of them holds. */
export type Catcher = "main" | "backup" | "both" | "remains" | "nothing";

/** Why nothing holds the walker. */
export type LostBecause = "leash" | "ring" | "ground" | "freeFall";

export interface GaveWay {
  readonly part: PartId;
  readonly time: number;
  /** The place on a webbing, as a fraction of its natural length [-]. */
  readonly at?: number;
}

/** Why a run gave no numbers to trust. */
export interface Trouble {
  readonly reason: "missing" | "before" | "cancelled" | "audit" | "diverged" | "equilibrium" | "limits" | "tooShort";
  readonly phrase?: Phrase;
  /** The engine's own words. */
  readonly detail?: string;
}

export type Peaks = Readonly<Record<"leash" | "mainA" | "mainB" | "backupA" | "backupB", number>>;
export type PeaksAlongLine = Pick<Recording["elementPeaks"]["main"], "at" | "peak">;

export interface GoodRun {
  readonly ok: true;
  readonly peaks: Peaks;
  /** Load of every part that has one load [N]; webbing is in `webbing`. A part that is not in it was not there to be loaded. */
  readonly loads: Readonly<Partial<Record<PartId, number>>>;
  /** Load of either anchor as a whole [N]. */
  readonly anchors: Readonly<Record<"A" | "B", number>>;
  readonly webbing: Readonly<Record<"main" | "backup", PeaksAlongLine>>;
  /** When the leash pulls hardest, in all of the run [s]. */
  readonly catchTime: number;
  readonly drop: number;
  /** Least height above the ground of the tie-in, and of the feet of an upright walker [m]; absent if the ground is not known. */
  readonly clearance?: number;
  readonly feetClearance?: number;
  /** Height of the feet if the whole fall had happened as far to the side as its place scatters; over steep ground far less [m]. */
  readonly feetNearby?: number;
  readonly groundSpeed?: number;
  readonly caughtBy: Catcher;
  readonly lostBecause?: LostBecause;
  /** Parts that the event itself does not take away. */
  readonly gaveWay: readonly GaveWay[];
  /** Ends of the main line whose weblock let webbing through, in the order of time; absent where none did. */
  readonly slipped?: readonly ("A" | "B")[];
  readonly trace?: Trace;
}
export type RunFacts = GoodRun;
export type RunResult = GoodRun | { readonly ok: false; readonly trouble: Trouble };
