/** The ring against a line at rest: which points it touches, how far off they are, and where along the line it comes to hang. */
import { makeWeights, weighLine } from "../lineWeights.ts";
import { hypot } from "../portable/index.ts";
import type { Contact, StaticsProblem } from "./staticsProblem.ts";

/** Weights of the contact that was weighed last. */
export const weights = makeWeights();
/** Ring and the line points it touches. */
export function contactMembers(contact: Contact): number[] {
  weighContact(contact);
  return [contact.ring, 0, 1, 2].map((k, i) => (i === 0 ? contact.ring : contact.points[weights.node + k]!));
}

function weighContact(contact: Contact): void {
  weights.xi = contact.xi;
  weighLine(weights, 0, contact.points.length - 1);
}

/** Of the contact that was measured last [m]. */
export const gap = new Float64Array(3);
/** Ring minus line point into `gap`; returns the distance. */
export function measureGap({ positions }: StaticsProblem, contact: Contact): number {
  weighContact(contact);
  for (let c = 0; c < 3; c++) {
    let point = 0;
    for (let k = 0; k < 3; k++) point += weights.w[k]! * positions[3 * contact.points[weights.node + k]! + c]!;
    gap[c] = positions[3 * contact.ring + c]! - point;
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
      let tangent = 0;
      for (let k = 0; k < 3; k++) tangent += weights.d[k]! * positions[3 * contact.points[weights.node + k]! + c]!;
      along += gap[c]! * tangent;
      square += tangent * tangent;
    }
    const slide = Math.min(Math.max(along / square, -0.5), 0.5);
    contact.xi = Math.min(Math.max(contact.xi + slide, 0), contact.points.length - 1);
    if (Math.abs(slide) < 1e-12) return;
  }
}
