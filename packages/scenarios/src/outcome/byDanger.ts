import type { PartId } from "@secondline/rig";
import type { WhatIfOutcome } from "../run/whatIfOutcome.ts";
import type { Outcome, PartOutcome } from "./outcome.ts";

/** A part in the what-if in which it has its least margin. */
export interface LeastMargin {
  readonly part: PartId;
  /** The margin r, and the required margin [-]. */
  readonly margin: number;
  readonly required: number;
  readonly verdict: PartOutcome["verdict"];
  /** The place on a webbing, in natural metres from A [m]. */
  readonly at?: number;
}

/** A what-if, and what it is the worst of. */
export interface RankedWhatIf {
  readonly entry: WhatIfOutcome;
  /** Parts that have their least margin in it, the one nearest to what is required first. */
  readonly worstOf: readonly LeastMargin[];
}

type Judged = Pick<Outcome, "whatIfs" | "parts">;

/** Among the parts that have their least margin in that what-if: the part nearest to its required margin, and the place. */
export function weakestIn({ whatIfs, parts }: Judged, key: string): LeastMargin | undefined {
  return worstOf(
    parts,
    whatIfs.findIndex((one) => one.key === key),
  )[0];
}

function worstOf(parts: Judged["parts"], index: number): readonly LeastMargin[] {
  return parts
    .flatMap(({ id, governing, byClass, verdict }): LeastMargin[] => {
      const least = governing && byClass[governing];
      if (least?.whatIf !== index) return [];
      const { margin, required, at } = least;
      return [{ part: id, margin, required, verdict, ...(at === undefined ? {} : { at }) }];
    })
    .sort((a, b) => a.margin / a.required - b.margin / b.required);
}

/**
 * What-ifs, the gravest first. What-ifs that could not be computed come first: nothing is known about them. Then come what-ifs in which
 * nobody is caught or that end on the ground. Then come those in which a part has its least margin, by margin over required margin. The
 * rest follow by the pull on the person.
 */
export function byDanger({ whatIfs, parts }: Judged): readonly RankedWhatIf[] {
  return whatIfs
    .map((entry, index): RankedWhatIf => ({ entry, worstOf: worstOf(parts, index) }))
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
