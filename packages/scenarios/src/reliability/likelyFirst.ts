/** Which part goes first in the worst what-if, from the draws that its loads are told by: the same model as that of `chances`. */

import type { Basis, PartId, Rig } from "@secondline/rig";
import { normalQuantile } from "@secondline/statistics";
import { failureChances, type LoadDraws } from "@secondline/strength";
import { takenAway } from "../events/registry.ts";
import type { LikelyFirst } from "../outcome/outcome.ts";
import { drawsOf, ENOUGH_DRAWS, type EventRuns } from "../rule/demand.ts";
import { BLOCK_DRAWS, SEED } from "../scatter/sampler.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";
import { loadedParts, loadsIn, worthKeeping } from "./loadedParts.ts";

/** Scatter of the loads of an event that was not drawn, common to all parts, standard deviation of ln load [-]. */
const LOAD_SCATTER = 0.2;
/** What the statement rests on; `chances` works it out for one what-if from more draws. */
export const LIKELY_FIRST_BASIS: Basis = {
  kind: "assumed",
  note: `strengths scatter as stated with each part, loads as in the draws of this what-if; where it was not drawn, all of them together by ${100 * LOAD_SCATTER} %`,
};
const LEAST_TOLD_CHANCE = 1e-3;
/** A glance: fewer than `chances` takes. */
const BELIEF_COUNT = 200;
const SAMPLE_COUNT = 250;

export function likelyFirst(
  rig: Rig,
  strengths: RigStrengths,
  event: EventRuns,
  seed = SEED,
): { readonly whatIf: number; readonly parts: readonly LikelyFirst[] } {
  const all = loadedParts(rig, strengths);
  const { deviates, loads } = loadDraws(all, strengths, event);
  const kept = worthKeeping(all, loads);
  const work = failureChances(
    kept.map((i) => all[i]!.part),
    { deviates, loads: loads.map((row) => kept.map((i) => row[i]!)) },
    { seed, beliefs: BELIEF_COUNT, samples: SAMPLE_COUNT },
  );
  let step = work.next();
  while (!step.done) step = work.next();
  const parts = step.value.parts
    .filter(({ first }) => first.value >= LEAST_TOLD_CHANCE)
    .map(({ id, first, fails }) => ({ id: id as PartId, first, fails }))
    .sort((a, b) => b.first.value - a.first.value);
  return { whatIf: event.index, parts };
}

function loadDraws(all: ReturnType<typeof loadedParts>, strengths: RigStrengths, one: EventRuns): LoadDraws {
  const { event, runs } = one;
  const loadsOf = (run: EventRuns["runs"][number]) => {
    const gone = strengths.parts.map(({ id }) => id as PartId).filter((id) => run.loads[id] === undefined);
    return loadsIn(all, run, strengths, [...takenAway(event), ...gone]);
  };
  const drawn = drawsOf(one);
  if (drawn.length >= ENOUGH_DRAWS) {
    return { deviates: drawn.map((each) => each.deviates), loads: drawn.map(({ run }) => loadsOf(run)) };
  }
  const middle = loadsOf(runs[0]!);
  const even = Array.from({ length: BLOCK_DRAWS }, (_, k) => normalQuantile((k + 0.5) / BLOCK_DRAWS));
  return {
    deviates: even.map((u) => [u]),
    loads: even.map((u) => middle.map((load) => load * Math.exp(LOAD_SCATTER * u))),
  };
}
