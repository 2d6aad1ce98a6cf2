/** A part's lognormal strength. It shares the deviations of common causes with other parts. */
import { logSpread } from "../derating/lognormal.ts";
import type { PartStrength } from "../parts/partStrength.ts";

export interface ReliabilityPart {
  readonly id: string;
  readonly name: string;
  /** The part of which this is one stretch, with a load and a strength of its own; all stretches count as one part. */
  readonly stretchOf?: { readonly id: string; readonly name: string };
  /** Median strength [N]. */
  readonly median: number;
  /** Standard deviation of ln strength that comes from each common cause [-]. */
  readonly causes: Readonly<Record<string, number>>;
  /** Standard deviation of ln strength that is the part's own [-]. */
  readonly own: number;
}

/** Splits a part's deviation into the shares of common causes and its own; for a line in its weakest zone. */
export function reliabilityPart(part: PartStrength): ReliabilityPart {
  const causes: Record<string, number> = {};
  let own = 0;
  for (const factor of part.factors) {
    if (factor.learnt !== undefined) {
      // The deviations of factors from the same tests are shared by all parts of that stock, with their signs.
      factor.learnt.loadings.forEach((loading, k) => {
        if (loading === 0) return;
        const cause = `${factor.learnt!.source}, ${k + 1}`;
        causes[cause] = (causes[cause] ?? 0) + loading;
      });
      own += factor.learnt.own ** 2;
      continue;
    }
    const sigma = logSpread(factor.spread);
    if (factor.shared > 0) causes[factor.cause] = (causes[factor.cause] ?? 0) + sigma * Math.sqrt(factor.shared);
    own += sigma * sigma * (1 - factor.shared);
  }
  return { id: part.id, name: part.name, median: part.strength, causes, own: Math.sqrt(own) };
}
