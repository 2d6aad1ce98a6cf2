/** What a study of chances says of one what-if. */
import type { Accuracy } from "@secondline/engine";
import type { PartId } from "@secondline/rig";
import type { Taken } from "../assessment/assessment.ts";
import type { WhatIf } from "../events/registry.ts";
import type { Phrase } from "../facts/phrase.ts";
import type { Probability } from "../outcome/outcome.ts";
import type { AnchorFacts, JudgedFactor } from "../rule/cautionFacts.ts";
import type { UncertainInput } from "../scatter/inputs.ts";
import type { KeptStretches } from "./loadedParts.ts";

/** Why there are no chances to work out. */
export type NoChances =
  | { readonly kind: "noBackup" }
  | { readonly kind: "afterPart"; readonly part: PartId }
  | { readonly kind: "missing"; readonly missing: Phrase };

export interface PartChance {
  readonly id: PartId;
  /** Median load of the draws, and median strength against it [N]; of webbing, where it is first most often. */
  readonly load: number;
  readonly strength: number;
  /** For webbing: the stretch that is first most often, from and to [m from A], and why it is weak. */
  readonly stretch?: { readonly from: number; readonly to: number; readonly reason: string };
  /** Probability that it has the least margin of all parts: that it would be first if the loads grew [-]. */
  readonly first: Probability;
  /** Probability that its load exceeds its strength, as long as nothing else has failed [-]. */
  readonly fails: Probability;
  /** Draws that load it with what counts beside its strength. */
  readonly loaded: number;
}

/** How much of the scatter of a margin comes from one source. */
export interface ScatterShare {
  /** None for chance. */
  readonly name?: string;
  /** "input": something about the fall; "chance": the scatter of the fall that no input explains; "strength": how parts scatter. */
  readonly kind: "input" | "chance" | "strength";
  /** The share with its 95 % interval; all shares add up to one [-]. */
  readonly share: Probability;
  /** False: the draws leave open whether it raises or lowers the load. */
  readonly distinguishable: boolean;
}

/** How many of the draws had a thing happen, and its chance. */
export interface Counted {
  readonly count: number;
  /** The share, with the 95 % interval from so many draws [-]. */
  readonly chance: Probability;
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
    readonly lost: Counted;
    /** The walker's feet come down to the ground. */
    readonly ground: Counted;
    /** Why draws could not be computed. */
    readonly failed: readonly string[];
  };
  /** Probability that any part fails in this what-if: never less than that of any one part. */
  readonly anyFails: Probability;
  /** Likeliest to be first first. */
  readonly parts: readonly PartChance[];
  /** Shares of the variance of the margin of the part that is likeliest to be first; largest first. */
  readonly shares: { readonly part: PartId; readonly reason?: string; readonly sources: readonly ScatterShare[] };
  readonly inputs: readonly UncertainInput[];
  /** Lines of which not all stretches are counted. */
  readonly dropped: readonly KeptStretches[];
  readonly judged: readonly JudgedFactor[];
  readonly anchors: readonly AnchorFacts[];
  readonly groundKnown: boolean;
}
