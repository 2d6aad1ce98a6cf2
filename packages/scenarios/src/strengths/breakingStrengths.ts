/** The strengths at which parts give way inside a run. */

/** A line's strength along its natural length. */
export interface LineBreaking {
  /** Where nothing weakens it [N]. */
  readonly strength: number;
  /** Stretches that hold less; fractions of natural length [-], strength [N]. */
  readonly zones: readonly { readonly from: number; readonly to: number; readonly strength: number }[];
}

export interface BreakingStrengths {
  readonly main: LineBreaking;
  readonly backup?: LineBreaking;
  /** Leash with its weakest knot [N]. */
  readonly leash: number;
  /** Strongest of the rings: the walker is lost when the last one parts [N]. */
  readonly ring: number;
  /** Strengths in the order of the rig's connections, tapes included [N]. */
  readonly connections: readonly number[];
  /** Rock points of either anchor; they part only in the run in which one of their legs fails [N]. */
  readonly points: Readonly<Record<"A" | "B", readonly number[]>>;
}
