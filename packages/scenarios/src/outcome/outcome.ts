/** What an assessment says: facts and numbers, no sentences. The words package makes the sentences, once. */
import type { Accuracy } from "@secondline/engine";
import type { Basis, Fact, PartId } from "@secondline/rig";
import type { Taken } from "../assessment/assessment.ts";
import type { EventClass } from "../events/eventKind.ts";
import type { Catcher } from "../facts/runFacts.ts";
import type { CautionFact } from "../rule/cautionFacts.ts";
import type { SearchGap } from "../rule/complete.ts";
import type { RequiredFactors } from "../rule/margins.ts";
import type { PersonMargin } from "../rule/person.ts";
import type { Reason, Verdict } from "../rule/verdict.ts";
import type { WhatIfOutcome } from "../run/whatIfOutcome.ts";
import type { SingleFailure } from "../singles/singleFailures.ts";

/** One factor on a part's strength. */
export interface AppliedFactor {
  readonly name: string;
  /** Central value [-]. */
  readonly value: number;
  /** Coefficient of variation [-]. */
  readonly spread: number;
  readonly basis: Basis;
}

/** A part's margin against one class of events. */
export interface ClassOutcome {
  /** r: 1 ÷ the largest E over R [-]. */
  readonly margin: number;
  /** The required factor [-]. */
  readonly required: number;
  /** E, what 95 % of such falls stay under in the worst event [N]. */
  readonly demand: number;
  /** The 95 % intervals of margin and E from the number of runs [-], [N]. */
  readonly marginInterval: readonly [low: number, high: number];
  readonly demandInterval: readonly [low: number, high: number];
  /** Middle of the event's runs [N]. */
  readonly middle: number;
  /** The largest load in the runs of that event [N], and the number of these runs. */
  readonly load: number;
  readonly runs: number;
  /**
   * The loads of these runs in rising order [N], of webbing as shares of the R at the place that governs; 0: it was not loaded. And whether
   * something was drawn in them.
   */
  readonly loads: readonly number[];
  readonly drawn: boolean;
  /** R, what 95 % of such parts reach, and the central value, at the place that governs [N]. */
  readonly strength5: number;
  readonly strength: number;
  /** Index into `whatIfs`. */
  readonly whatIf: number;
  /** The place on a webbing in natural metres from A, and what lies there. */
  readonly at?: number;
  readonly reason?: string;
}

/** Holds: only after the whole search. Open: nothing found so far. Not loaded: no run loaded the part. */
export type PartVerdict = "fails" | "thin" | "open" | "holds" | "notLoaded";

/** Why no run loaded a part: runs ended with the walker lost, not everything was run, or it carries nothing in any. */
export type NotLoadedBecause = "walkerLost" | "notRun" | "carriesNothing";

/** Parts in the order of the load's way, from harness to rock. */
export interface PartOutcome {
  readonly id: PartId;
  readonly verdict: PartVerdict;
  readonly byClass: Readonly<Partial<Record<EventClass, ClassOutcome>>>;
  /** Whether more runs cannot change what is said about the part. */
  readonly settled: boolean;
  /** The class that governs; absent with `notLoaded`. */
  readonly governing?: EventClass;
  readonly notLoaded?: NotLoadedBecause;
  readonly rated: number;
  readonly ratedBasis: Basis;
  /** The strength at the place that governs; for a part that is not loaded, at its weakest place [N]. */
  readonly strength: number;
  readonly strength5: number;
  readonly factors: readonly AppliedFactor[];
  /** Bases of rated strength and of every factor, weakest first. */
  readonly bases: readonly Basis[];
  /** For webbing and leash: where it governs [natural m from A, or from the ring], and what lies there. */
  readonly weakest?: { readonly at: number; readonly reason: string };
  /** What a reader must know of this strength: factors beyond their range, nothing written down. */
  readonly flags: readonly Fact[];
}

export interface Probability {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** How likely a part is to be the first, by simulation of the scatter. */
export interface LikelyFirst {
  readonly id: PartId;
  /** Probability that it has the least margin of all, with its 95 % interval from the number of draws alone [-]. */
  readonly first: Probability;
  /** Probability that its load exceeds its strength [-]. */
  readonly fails: Probability;
}

/** What follows when a part that keeps less than required gives way at its peak. */
export interface FollowUp {
  readonly part: PartId;
  /** The event in which it gives way. */
  readonly during: number;
  readonly caughtBy: Catcher;
  /** The event that shows it; absent where nothing is left by how the rig is built up. */
  readonly whatIf?: number;
}

export interface LowestOutcome {
  readonly whatIf: number;
  /** The 95 % interval, the worse end last [m]. */
  readonly interval: readonly [better: number, worse: number];
}

export interface Outcome {
  readonly rigName: string;
  readonly span: number;
  readonly invented: boolean;
  readonly taken: Taken;
  /** What the wear record and the break log say must be looked at. */
  readonly notes: readonly Fact[];
  /** SHA-256 of the assessment. */
  readonly hash: string;
  readonly accuracy: Accuracy;
  readonly search: {
    readonly complete: boolean;
    readonly gaps: readonly SearchGap[];
    /** Events of the set that were run, how many the set has, and runs in all. */
    readonly events: number;
    readonly of: number;
    readonly runs: number;
    /** Chosen by whoever asked, and not the whole set. */
    readonly chosen: boolean;
  };
  readonly required: RequiredFactors & { readonly clearance: number };
  readonly verdict: Verdict;
  readonly reasons: readonly Reason[];
  readonly whatIfs: readonly WhatIfOutcome[];
  readonly parts: readonly PartOutcome[];
  /** The pull on the person. */
  readonly person?: PersonMargin;
  /** The part with the least share of its required margin. */
  readonly leastMargin?: PartId;
  /** The part that is likeliest to be the first to fail in the worst what-if. */
  readonly firstToFail?: PartId;
  /** The what-if, and the parts that may fail first in it with a chance above one in a thousand, likeliest first. */
  readonly likelyFirst: { readonly whatIf: number; readonly parts: readonly LikelyFirst[] } | undefined;
  readonly singles: readonly SingleFailure[];
  readonly followUps: readonly FollowUp[];
  readonly falls: {
    /** The height of the feet that 95 % of the falls keep in the worst what-if, and the drop that they stay under [m]. */
    readonly leastFeet?: LowestOutcome & { readonly height: number };
    readonly deepest?: LowestOutcome & { readonly drop: number };
    readonly notCaught: readonly number[];
    readonly onGround: readonly number[];
  };
  /** Blanks of the rig's history that cost most strength, dearest first. */
  readonly blanks: readonly {
    readonly part: PartId;
    /** Path in the rig document. */
    readonly field: string;
    /** Strength with the blank over the strength if the best possible stood there [-]. */
    readonly costs: number;
  }[];
  readonly weakestBases: readonly Basis[];
  readonly cautions: readonly CautionFact[];
  readonly statics: {
    /** [N], [m] */
    readonly unloadedTension: number;
    readonly unloadedSag: number;
    readonly standingTension: number;
    readonly standingSag: number;
  };
}
