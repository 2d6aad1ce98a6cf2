/** The ring against a line at rest: which points it touches, how far off they are, and where along the line it comes to hang. */
import { makeWeights, WEIGHTED_NODES, weighLine } from "../line/lineWeights.ts";
import { hypot } from "../portable/index.ts";
import type { Contact, StaticsProblem } from "./staticsProblem.ts";

/** Weights of the contact that was weighed last. */
export const weights = makeWeights();
/** Ring and the line points it touches, as many as weights lie on the line. */
export function contactMembers(contact: Contact): number[] {
  weighContact(contact);
  return [contact.ring, ...contact.points.slice(weights.node, weights.node + WEIGHTED_NODES)];
}

function weighContact(contact: Contact): void {
  weights.xi = contact.xi;
  weighLine(weights, 0, contact.points.length - 1);
}

/** Weighted sum of a coordinate of the line points, by the weights of the contact that was weighed last [m]. */
export function weighted(by: Float64Array, positions: Float64Array, { points }: Contact, c: number): number {
  let sum = 0;
  for (let k = 0; k < WEIGHTED_NODES && weights.node + k < points.length; k++) {
    sum += by[k]! * positions[3 * points[weights.node + k]! + c]!;
  }
  return sum;
}

/** Gap of the contact that was measured last [m]. */
export const gap = new Float64Array(3);
/** Ring minus line point into `gap`; returns the distance. */
export function measureGap({ positions }: StaticsProblem, contact: Contact): number {
  weighContact(contact);
  for (let c = 0; c < 3; c++) {
    gap[c] = positions[3 * contact.ring + c]! - weighted(weights.w, positions, contact, c);
  }
  return hypot(gap[0]!, gap[1]!, gap[2]!);
}

/** Slides the contact to the point of the line nearest to the ring. */
export function settleContact(problem: StaticsProblem, contact: Contact): void {
  if (!contact.slides) return;
  const { positions } = problem;
  for (let i = 0; i < 20; i++) {
    measureGap(problem, contact);
    let along = 0;
    let square = 0;
    for (let c = 0; c < 3; c++) {
      const tangent = weighted(weights.d, positions, contact, c);
      along += gap[c]! * tangent;
      square += tangent * tangent;
    }
    const slide = Math.min(Math.max(along / square, -0.5), 0.5);
    contact.xi = Math.min(Math.max(contact.xi + slide, 0), contact.points.length - 1);
    if (Math.abs(slide) < 1e-12) return;
  }
}
