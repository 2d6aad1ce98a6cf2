/** Which part goes first when strengths and loads scatter: a small Monte Carlo over the loads of a study. */
import type { Basis } from "@secondline/rig";
import { firstToFail, lognormalInput, type PartStrength, reliabilityPart } from "@secondline/strength";
import type { LikelyFirst } from "./outcome.ts";

/** Scatter of the loads, common to all parts, coefficient of variation [-]. */
const LOAD_SCATTER = 0.15;
/** What the quick statement rests on; `chances` works it out for one what-if. */
export const LIKELY_FIRST_BASIS: Basis = {
  kind: "assumed",
  note: `strengths scatter as stated with each part, and all loads together by ${100 * LOAD_SCATTER} %, for what the walker's mass, the place of the fall, stiffness and damping may do`,
};
const RUNS = 20_000;
/** Any number: the same one, so that the same rig gives the same answer. */
const SEED = 20_260_701;
const WORTH_TELLING = 1e-3;

export function likelyFirst(
  governing: readonly { readonly part: PartStrength; readonly load: number }[],
): readonly LikelyFirst[] {
  if (governing.length === 0) return [];
  const loads = governing.map(({ load }) => load);
  const found = firstToFail(
    {
      inputs: [lognormalInput("loads", 1, LOAD_SCATTER)],
      parts: governing.map(({ part }) => reliabilityPart(part)),
      loads: ([scatter]) => loads.map((load) => load * scatter!),
    },
    { runs: RUNS, seed: SEED },
  );
  return found.parts
    .filter(({ first }) => first.value >= WORTH_TELLING)
    .map(({ id, name, first, fails }) => ({ id, name, first, fails }))
    .sort((a, b) => b.first.value - a.first.value);
}
