/** What a verdict says besides its runs, of the rigs of a sweep: a curve over numbers does not tell it. */
import { type Judged, judgedFactors } from "../rule/cautionFacts.ts";
import { withheldIn } from "../rule/withheld.ts";
import type { Besides } from "./sweepOutcome.ts";
import type { SweepPoint } from "./sweepPoints.ts";

export function besidesOf(points: readonly SweepPoint[]): Besides {
  const withheld = new Map<string, number[]>();
  points.forEach(({ assessed, strengths }, i) => {
    for (const what of withheldIn(assessed, strengths)) withheld.set(what, [...(withheld.get(what) ?? []), i]);
  });
  const lapses = points.flatMap(({ assessed }) => assessed.upkeep.lapses);
  return {
    judged: largestOf(points.flatMap(({ strengths }) => judgedFactors(strengths.parts, new Map()))),
    withheld: [...withheld].map(([what, at]) => ({ what, points: at })),
    lapses: [...new Map(lapses.map((one) => [JSON.stringify(one), one])).values()],
  };
}

/** One that is swept itself is told by its largest value. */
function largestOf(all: readonly Judged[]): readonly Judged[] {
  const found = new Map<string, Judged>();
  for (const one of all) {
    const key = JSON.stringify([one.part, one.factor, one.reason]);
    const known = found.get(key);
    if (!known || one.value > known.value) found.set(key, one);
  }
  return [...found.values()];
}
