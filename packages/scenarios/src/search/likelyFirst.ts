/** Which part goes first in one what-if when strengths and loads scatter: a small Monte Carlo over the loads of its runs. */
import type { Basis, PartId } from "@secondline/rig";
import { firstToFail, lognormalInput, type PartStrength, reliabilityPart } from "@secondline/strength";
import { takenAway } from "../events/registry.ts";
import type { LikelyFirst } from "../facts/outcome.ts";
import type { RigStrengths } from "../rigStrengths.ts";
import type { EventRuns } from "../rule/demand.ts";
import type { PartMargins } from "../rule/margins.ts";
import { lengthOf, utilisation } from "../rule/utilisation.ts";

/** Scatter of the loads, common to all parts, coefficient of variation [-]. */
const LOAD_SCATTER = 0.15;
/** What the quick statement rests on; `chances` works it out for one what-if. */
export const LIKELY_FIRST_BASIS: Basis = {
  kind: "assumed",
  note: `strengths scatter as stated with each part, and all loads together by ${100 * LOAD_SCATTER} %, for what the walker's mass, the place of the fall, stiffness and damping may do`,
};
const RUNS = 5000;
/** Any number: the same one, so that the same rig gives the same answer. */
const SEED = 20_260_701;
const WORTH_TELLING = 1e-3;

export function likelyFirst(
  margins: readonly PartMargins[],
  { index, event, runs }: EventRuns,
  strengths: RigStrengths,
): { readonly whatIf: number; readonly parts: readonly LikelyFirst[] } {
  const absent = takenAway(event);
  const loaded = margins.flatMap(({ part }) => {
    if (absent.includes(part.id as PartId)) return [];
    const worst = runs
      .flatMap((run) => utilisation(part, run, lengthOf(strengths, part)) ?? [])
      .reduce<ReturnType<typeof utilisation>>((a, b) => (a && a.share >= b.share ? a : b), undefined);
    if (!worst) return [];
    const { zone } = worst;
    const there: PartStrength = zone ? { ...part, factors: zone.factors, strength: zone.strength } : part;
    return [{ part: there, load: worst.load }];
  });
  const loads = loaded.map(({ load }) => load);
  const found = firstToFail(
    {
      inputs: [lognormalInput("loads", 1, LOAD_SCATTER)],
      parts: loaded.map(({ part }) => reliabilityPart(part)),
      loads: ([scatter]) => loads.map((load) => load * scatter!),
    },
    { runs: RUNS, seed: SEED },
  );
  const parts = found.parts
    .filter(({ first }) => first.value >= WORTH_TELLING)
    .map(({ id, first, fails }) => ({ id: id as PartId, first, fails }))
    .sort((a, b) => b.first.value - a.first.value);
  return { whatIf: index, parts };
}
