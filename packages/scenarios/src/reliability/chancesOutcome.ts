/** What a study of chances says of one what-if. */
import type { Accuracy } from "@secondline/engine";
import type { PartId } from "@secondline/rig";
import type { ShareKind } from "@secondline/strength";
import type { Taken } from "../assessment/assessment.ts";
import type { Phrase } from "../events/phrase.ts";
import type { WhatIf } from "../events/registry.ts";
import type { AnchorFacts, Judged } from "../facts/cautionFacts.ts";
import type { Probability } from "../facts/outcome.ts";
import type { UncertainInput } from "../scatter/inputs.ts";
import type { KeptStretches } from "./loadedParts.ts";

/** Why there are no chances to work out. */
export type NoChances =
  | { readonly kind: "noBackup" }
  | { readonly kind: "afterPart"; readonly part: PartId }
  | { readonly kind: "missing"; readonly missing: Phrase };

export interface PartChance {
  readonly id: PartId;
  /** Median load of the runs, and median strength against it [N]; of webbing, where it is first most often. */
  readonly load: number;
  readonly strength: number;
  /** For webbing: the stretch that is first most often, from and to [m from A], and why it is weak. */
  readonly stretch?: { readonly from: number; readonly to: number; readonly reason: string };
  /** Probability that it has the least margin of all parts: that it would be first if the loads grew [-]. */
  readonly first: Probability;
  /** Probability that its load exceeds its strength, as long as nothing else has failed [-]. */
  readonly fails: Probability;
}

/** How much of the scatter of the least margin comes from one source. */
export interface ScatterShare {
  readonly name: string;
  /** "input": something about the fall; "strength": how parts scatter; "surface": what the fitted loads miss. */
  readonly kind: ShareKind;
  /** By itself, with its 95 % interval [-]. */
  readonly first: Probability;
  /** Together with others [-]. */
  readonly total: Probability;
  /** False: cannot be told from nothing. */
  readonly distinguishable: boolean;
}

export interface SurfaceFit {
  readonly part: PartId;
  /** Of webbing: what lies on the stretch. */
  readonly reason?: string;
  /** About the relative error of a load, of runs left out [-]. */
  readonly error: number;
  /** Error from which on the surface is not trusted [-]. */
  readonly limit: number;
  /** Share of the scatter of the load that left-out runs are predicted with [-]. */
  readonly explained: number;
  readonly matters: boolean;
}

export interface Chances {
  readonly rigName: string;
  readonly span: number;
  readonly invented: boolean;
  readonly taken: Taken;
  readonly whatIf: WhatIf;
  readonly key: string;
  readonly accuracy: Accuracy;
  readonly seed: number;
  /** SHA-256 of rig, what-if and options. */
  readonly inputHash: string;
  readonly runs: {
    readonly asked: number;
    readonly done: number;
    /** Nothing catches the walker, whatever the parts hold. */
    readonly lost: number;
    /** The walker's feet come down to the ground. */
    readonly ground: number;
    /** Why runs could not be computed. */
    readonly failed: readonly string[];
  };
  /** "surface": loads between the runs are fitted; "runs": the fit missed too much, the runs themselves are counted. */
  readonly method: "surface" | "runs";
  /** Probability that any part fails in this what-if. */
  readonly anyFails: Probability & {
    /** By plain or by conditional sampling. */
    readonly sampling: "plain" | "conditional";
    /** Coefficient of variation of the estimate; conditional sampling only [-]. */
    readonly spread?: number;
    /** False: smaller than could be found; `value` is then an upper bound. */
    readonly reached: boolean;
  };
  /** Likeliest to be first first. */
  readonly parts: readonly PartChance[];
  /** Largest by itself first; none with the method "runs". */
  readonly shares: readonly ScatterShare[];
  readonly inputs: readonly UncertainInput[];
  /** One per part, or stretch of one. */
  readonly surfaces: readonly SurfaceFit[];
  /** What the numbers rest on. */
  readonly grounds: {
    /** Draws of strengths and inputs. */
    readonly draws: number;
    readonly dropped: readonly KeptStretches[];
    /** How many runs were made on the standard mesh too, and the largest relative change of a load that matters [-]. */
    readonly meshChange?: { readonly runs: number; readonly most: number };
    /** Share of the failures outside of what was simulated [-]. */
    readonly beyond?: number;
  };
  readonly judged: readonly Judged[];
  readonly anchors: readonly AnchorFacts[];
  readonly groundKnown: boolean;
}
