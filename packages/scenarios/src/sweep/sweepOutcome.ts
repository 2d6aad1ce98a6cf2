/** What a sweep says: facts and numbers, no sentences. A point of a sweep never says that a rig holds. */
import type { Accuracy } from "@secondline/engine";
import type { Fact, PartId } from "@secondline/rig";
import type { Lapse } from "@secondline/strength";
import type { EventClass } from "../events/eventKind.ts";
import type { WhatIf } from "../events/registry.ts";
import type { JudgedFactor } from "../rule/cautionFacts.ts";
import type { Knob } from "./knob.ts";
import type { BadPoint } from "./sweepPoints.ts";

export type SweepWhat =
  /** The least ratio of a part's margin to its required margin [-]; 1: just what is required. */
  | { readonly kind: "margin" }
  /** How far down the walker goes [m], and the least height of the feet above the ground [m]. */
  | { readonly kind: "drop" | "height" }
  /** What the part has to carry [N]. */
  | { readonly kind: "load"; readonly part: PartId };

/** A value in the unit of what is asked, and its 95 % interval from the number of runs; low lies below high. */
export interface Told {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What governs at a place of the sweep. */
export interface Governing {
  readonly event: WhatIf;
  readonly key: string;
  /** For a margin: the part, and the class of the events. */
  readonly part?: PartId;
  readonly class?: EventClass;
}

/** What the sweep found at one value, or at one pair of values. */
export interface SweptPoint {
  readonly values: readonly number[];
  readonly change: Readonly<Record<string, string>>;
  /** From the smooth curve through the runs of all points; if this point's own runs say worse, from those. */
  readonly curve?: Told & Governing;
  /** From this point's runs; how much they scatter is learnt from the runs of all points. */
  readonly own?: Told & Governing;
  /** The hardest run that was made of what governs here: `check --what-if` of this rig makes the event's. */
  readonly run?: { readonly whatIf: string; readonly draw: string };
  readonly runs: number;
  /** Runs that gave no numbers, that ended with nothing holding the walker, and that brought the feet to the ground; a run may do both. */
  readonly failed: number;
  readonly lost: number;
  readonly ground: number;
}

export type LimitKind = "required" | "ground" | "clearance" | "own";
export interface SweepLimit {
  readonly kind: LimitKind;
  /** The limit in the unit of what is asked. */
  readonly value: number;
}

/** Where a curve meets a limit. */
export interface Crossing {
  readonly limit: SweepLimit;
  /** The limit is kept on this side of the knob's value `at`, `at` included. */
  readonly kept: "above" | "below";
  readonly at: number;
  /** 95 % interval; absent where it reaches out of the range. */
  readonly low?: number;
  readonly high?: number;
  readonly governing: Governing;
}

/** Where a limit is met, or whether it is kept all over the range; sure if the whole band says so too. */
export interface LimitFound {
  readonly limit: SweepLimit;
  readonly crossings: readonly Crossing[];
  readonly throughout?: { readonly keeps: boolean; readonly sure: boolean; readonly worst: Told & Governing };
}

export type CellState = "keeps" | "open" | "below";

/** For two knobs: where the limit is kept. */
export interface Region {
  readonly limit: SweepLimit;
  /** One per point, in their order. */
  readonly states: readonly (CellState | undefined)[];
  /** The outline: for values of the second knob, stretches of the first in which the limit is kept with the whole band. */
  readonly outline: readonly {
    readonly at: number;
    readonly kept: readonly KnobRange[];
  }[];
}

/** A range of a knob's values, both ends included. */
export interface KnobRange {
  readonly from: number;
  readonly to: number;
}

/** What a verdict tells that does not come from its runs. */
export interface Besides {
  /** Factors of parts that somebody judged, or that raise a strength. */
  readonly judged: readonly JudgedFactor[];
  /** What somebody must look at, or what lies beyond what is known, before the rig may be said to hold; at which points. */
  readonly withheld: readonly { readonly what: Fact; readonly points: readonly number[] }[];
  readonly lapses: readonly Lapse[];
}

export interface Swept {
  readonly rigName: string;
  readonly invented: boolean;
  readonly knobs: readonly Knob[];
  readonly what: SweepWhat;
  readonly accuracy: Accuracy;
  readonly points: readonly SweptPoint[];
  readonly bad: readonly BadPoint[];
  /** For one knob: the limits. */
  readonly limits: readonly LimitFound[];
  /** For one knob with continuous values: the curve at close steps, for drawing. */
  readonly line?: readonly (Told & { readonly at: number })[];
  /** For one knob: ranges in which the last limit is kept; absent without a limit. */
  readonly kept?: readonly KnobRange[];
  /** For two knobs: where the last limit is kept. */
  readonly region?: Region;
  /** The events that were drawn, and how many events were looked at. */
  readonly events: readonly { readonly event: WhatIf; readonly key: string }[];
  readonly looked: number;
  /** Events that gave no number where all were looked at: whether one of them governs nobody knows. */
  readonly silent: readonly { readonly event: WhatIf; readonly key: string }[];
  readonly runs: number;
  readonly draws: number;
  /** How many times more than by chance the points lie off the curves that govern, in squares [-]. */
  readonly misfit: number;
  readonly besides: Besides;
}
