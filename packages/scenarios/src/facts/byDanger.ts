import type { PartId } from "@secondline/rig";
import type { Outcome, PartOutcome, WhatIfOutcome } from "./outcome.ts";

/** A what-if, and what it is the worst of. */
export interface RankedWhatIf {
  readonly entry: WhatIfOutcome;
  /** Parts that have their least margin in it, the one nearest to what is required first. */
  readonly worstOf: readonly {
    readonly part: PartId;
    readonly margin: number;
    readonly required: number;
    readonly verdict: PartOutcome["verdict"];
  }[];
}

/**
 * What-ifs, the gravest first: those that nobody is caught in or that end on the ground, then those in which a part has its least
 * margin, by how much of what is required is left, then by the pull on the person. Those that could not be computed come first of all:
 * nothing is known of them.
 */
export function byDanger({ whatIfs, parts }: Pick<Outcome, "whatIfs" | "parts">): readonly RankedWhatIf[] {
  const all = whatIfs.map((entry, index): RankedWhatIf => {
    const worstOf = parts.flatMap(({ id, governing, byClass, verdict }) => {
      const least = governing && byClass[governing];
      return least?.whatIf === index
        ? [{ part: id as PartId, margin: least.margin, required: least.required, verdict }]
        : [];
    });
    return { entry, worstOf: worstOf.sort((a, b) => a.margin / a.required - b.margin / b.required) };
  });
  return all
    .map((one, i) => ({ one, i }))
    .sort(
      (a, b) => grade(a.one) - grade(b.one) || share(a.one) - share(b.one) || pull(b.one) - pull(a.one) || a.i - b.i,
    )
    .map(({ one }) => one);
}

const grade = ({ entry }: RankedWhatIf): number => {
  if (!entry.ok) return 0;
  if (entry.lostBecause !== undefined || entry.caughtBy === "nothing" || onGround(entry)) return entry.counts ? 1 : 2;
  return 3;
};
const onGround = ({ feetClearance }: WhatIfOutcome): boolean => feetClearance !== undefined && feetClearance <= 0;
const share = ({ worstOf: [least] }: RankedWhatIf): number =>
  least ? least.margin / least.required : Number.MAX_VALUE;
const pull = ({ entry }: RankedWhatIf): number => entry.peaks?.leash ?? 0;
