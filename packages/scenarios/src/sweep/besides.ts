/** What a verdict says besides its runs, of the rigs of a sweep: a curve over numbers does not tell it. */
import { distinctFacts, sameFact } from "@secondline/rig";
import { type JudgedFactor, judgedFactors } from "../rule/cautionFacts.ts";
import { withheldIn } from "../rule/withheld.ts";
import type { Besides } from "./sweepOutcome.ts";
import type { SweepPoint } from "./sweepPoints.ts";

export function besidesOf(points: readonly SweepPoint[]): Besides {
  const open = points.map(({ assessed, strengths }) => withheldIn(assessed, strengths));
  const withheld = distinctFacts(open.flat()).map((what) => ({
    what,
    points: open.flatMap((some, i) => (some.some((one) => sameFact(one, what)) ? [i] : [])),
  }));
  const lapses = points.flatMap(({ assessed }) => assessed.upkeep.lapses);
  return {
    judged: largestOf(points.flatMap(({ strengths }) => judgedFactors(strengths.parts, new Map()))),
    withheld,
    lapses: [...new Map(lapses.map((one) => [JSON.stringify(one), one])).values()],
  };
}

/** A factor that is swept itself is told by its largest value. */
function largestOf(all: readonly JudgedFactor[]): readonly JudgedFactor[] {
  const found = new Map<string, JudgedFactor>();
  for (const one of all) {
    const key = JSON.stringify([one.part, one.factor, one.reason]);
    const known = found.get(key);
    if (!known || one.value > known.value) found.set(key, one);
  }
  return [...found.values()];
}
