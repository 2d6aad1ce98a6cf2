/** What a study of a rig says: per part the load, the strength, the margin and what they rest on. */
import type { Accuracy, Recording } from "@secondline/engine";
import type { Basis } from "@secondline/rig";

/** One event to simulate. Places are fractions of the main line's natural length, 0 at anchor A. */
export type WhatIf =
  | { readonly kind: "leashFall"; readonly at: number }
  | {
      readonly kind: "mainFails";
      readonly at: number;
      readonly cutAt: number;
      readonly walker: "hanging" | "standing" | "caught";
    }
  /** The leg to one of an anchor's rock points fails: that with index `leg` [-]. */
  | {
      readonly kind: "legFails";
      readonly at: number;
      readonly anchor: "A" | "B";
      readonly leg: number;
      readonly walker: "hanging" | "caught";
    };

export type Verdict = "holds" | "thin" | "fails";

/** One factor on a part's strength. */
export interface AppliedFactor {
  readonly name: string;
  /** Central value [-]. */
  readonly value: number;
  /** Coefficient of variation [-]. */
  readonly spread: number;
  readonly basis: Basis;
}

/** Parts in the order of the load's way, from harness to rock. */
export interface PartOutcome {
  /** Stable id, e.g. "leash", "ring", "main", "backup", "endA", "anchorA.points.0", "connection.0". */
  readonly id: string;
  readonly name: string;
  /** Largest load over the what-ifs [N]. */
  readonly load: number;
  /** Numerical uncertainty of `load`, ± [N]; absent when not estimated. The verdict is for the upper end. */
  readonly loadUncertainty?: number;
  /** A ± was asked for but the second run failed: how far `load` is off is not known, and the part is thin at best. */
  readonly uncertaintyUnknown?: true;
  /** Index into `whatIfs` of the one with the largest load; of the least margin for webbing. */
  readonly whatIf: number;
  readonly rated: number;
  /** Central strength after derating [N]. */
  readonly strength: number;
  /** 5 % value of strength [N]. */
  readonly strength5: number;
  readonly margin: number;
  readonly margin5: number;
  readonly verdict: Verdict;
  /** Broke in a run. */
  readonly parts: boolean;
  readonly factors: readonly AppliedFactor[];
  /** Bases of rated strength and of every factor, weakest first. */
  readonly bases: readonly Basis[];
  /** For webbing: where along the natural length the margin is least [m from A], and why. */
  readonly weakest?: { readonly at: number; readonly reason: string };
  /** What a reader must know of this strength: factors beyond their range, nothing written down. */
  readonly flags?: readonly string[];
}

/** Key results of one what-if. */
export interface WhatIfOutcome {
  readonly whatIf: WhatIf;
  readonly title: string;
  readonly ok: boolean;
  /** Why its numbers cannot be trusted, when not ok. */
  readonly problem?: string;
  readonly peaks?: Readonly<Record<"leash" | "mainA" | "mainB" | "backupA" | "backupB", number>>;
  readonly drop?: number;
  /** Least height of the tie-in above the ground [m]; 0 or less: the walker hits it. */
  readonly clearance?: number;
  readonly groundSpeed?: number;
  /** Least height of the feet of an upright walker above the ground [m]; 0 or less: they touch it. */
  readonly feetClearance?: number;
  readonly broke: readonly { readonly part: string; readonly time: number; readonly at?: number }[];
  readonly caught: boolean;
  /** Numerical uncertainty of the peaks, ± [N], when an estimate was asked for. */
  readonly peakUncertainty?: Readonly<Record<"leash" | "mainA" | "mainB" | "backupA" | "backupB", number>>;
  /** Force over time for a small plot, when traces were asked for. */
  readonly trace?: Trace;
}

/**
 * Force over time, thinned out for a small plot without losing a peak: per bin the least and the largest of the CFC 60
 * signal, alternating [N]. Bins of equal length over `duration` [s].
 */
export interface Trace {
  readonly duration: number;
  readonly bins: number;
  readonly leash: readonly number[];
  /** Main line and backup together, at either end. */
  readonly anchorA: readonly number[];
  readonly anchorB: readonly number[];
}

/** How likely a part is to be the first, by simulation of the scatter. */
export interface LikelyFirst {
  readonly id: string;
  readonly name: string;
  /** Probability that it has the least margin of all, with its 95 % interval from the number of runs alone [-]. */
  readonly first: Probability;
  /** Probability that its load exceeds its strength [-]. */
  readonly fails: Probability;
}
export interface Probability {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface Outcome {
  readonly rigName: string;
  readonly invented: boolean;
  readonly accuracy: Accuracy;
  /** Which what-ifs were run, how many, and how many the full set of the rig has. */
  readonly set?: { readonly kind: "full" | "quick" | "chosen"; readonly run: number; readonly full: number };
  readonly requiredFactor: number;
  readonly whatIfs: readonly WhatIfOutcome[];
  readonly parts: readonly PartOutcome[];
  /** Id of the part with the least margin. */
  readonly firstToFail: string;
  /** The parts likeliest to be first when strengths and loads scatter, likeliest first; those above one in a thousand. */
  readonly likelyFirst: readonly LikelyFirst[];
  readonly verdict: Verdict;
  /** Indices into `whatIfs` of those that could not be computed; the verdict is incomplete when there are any. */
  readonly incomplete: readonly number[];
  /** The verdict in one sentence. */
  readonly sentence: string;
  readonly weakestBases: readonly Basis[];
  readonly cautions: readonly string[];
  /** Standing tension and sag, unloaded tension and sag [N, m]. */
  readonly statics: {
    readonly unloadedTension: number;
    readonly unloadedSag: number;
    readonly standingTension: number;
    readonly standingSag: number;
  };
}

/** A what-if with its recording, for the eye. */
export interface WhatIfRun {
  readonly outcome: WhatIfOutcome;
  readonly recording?: Recording;
}
