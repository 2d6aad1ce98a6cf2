/** Where everything is at t = 0, and what the rig carries standing still. */
import { GRAVITY } from "../constants.ts";
import type { Line } from "../line/line.ts";
import type { Model } from "../line/model.ts";
import { strainAt } from "../line/tensionCurve.ts";
import type { Standing } from "../record/recording.ts";
import { type Legs, legsOf } from "../rigging/legs.ts";
import { type Rest, restOf } from "./rest.ts";

export interface StartRest extends Rest {
  readonly walker: readonly [number, number, number];
  readonly legs: Legs;
  readonly standing: Standing;
  /** Stiffness of the ring against each line [N/m]. */
  readonly contact: { readonly main: number; readonly backup: number };
}

/** Thrown when a line finds no rest; says which line and how much force is left over. */
export class NoEquilibrium extends Error {}

export function restAtStart(model: Model): StartRest {
  const { problem } = model;
  const legs = legsOf(problem);
  const contact = contactStiffness(model);
  const reported = settled(restOf(model, "onNode", contact, legs));
  const start = settled(restOf(model, problem.start === "hanging" ? "onRing" : "standing", contact, legs));
  const node = [0, 1, 2].map((c) => start.main[3 * model.start + c]!) as [number, number, number];
  const weight = problem.walker.mass * GRAVITY;
  const { length } = problem.leash;
  const walker: [number, number, number] =
    problem.start === "standing"
      ? [node[0], node[1] + problem.walker.lateral, node[2] + problem.walker.tieIn]
      : [start.ring[0]!, start.ring[1]!, start.ring[2]! - length * (1 + strainAt(model.leash.curve, weight))];
  return { ...start, walker, legs, contact, standing: standingOf(model, reported) };
}

export function standingOf(model: Model, rest: Rest): Standing {
  const point = [0, 1, 2].map((c) => rest.main[3 * model.start + c]!) as [number, number, number];
  return { tension: rest.tension, sag: model.problem.rise * model.main.fractions[model.start]! - point[2], point };
}

export function settled(rest: Rest): Rest {
  if (rest.ok) return rest;
  throw new NoEquilibrium(
    `no equilibrium found: ${rest.residual.toPrecision(3)} N out of balance at the ${rest.worst}, after ${rest.iterations} iterations`,
  );
}

/** Largest share of the stability limit that the contact may take up on top of the lines' own [-]. */
const CONTACT_SHARE = 0.06;

/**
 * Stiffness of the ring against each line [N/m]: as high as the step bears. The line's bend under the ring is the weights' matter
 * (`lineWeights.ts`); the spring stands for nothing.
 */
export function contactStiffness(model: Model): { main: number; backup: number } {
  const { problem, step } = model;
  const stiffness = (line: Line | undefined): number => {
    if (!line) return 0;
    const node = Math.min(...line.masses.subarray(1, line.nodes - 1));
    return (CONTACT_SHARE * 4) / (step * step * (1 / problem.ring.mass + 1 / node));
  };
  return { main: stiffness(model.main), backup: stiffness(model.backup) };
}
