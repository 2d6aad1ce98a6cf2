/**
 * How a ring that slides freely along a line at rest softens its contact. The contact's energy is the least over its place ξ on the
 * line, E(x) = min E(x, ξ), so that its Hessian is E_xx − E_xξ·E_ξx/E_ξξ: without the second part Newton's method creeps, and sticks
 * some hundredths of a newton short of balance.
 */
import { WEIGHTED_NODES } from "../line/lineWeights.ts";
import { gap, weighted, weights } from "./contactGap.ts";
import type { Contact, StaticsProblem } from "./staticsProblem.ts";

/** Least of E_ξξ that counts, as a share of a straight line's: in a sharp bend the nearest point is about to jump [-]. */
const LEAST_CURVATURE_SHARE = 0.1;

const tangent = new Float64Array(3);
const stiff = new Float64Array(3);
const pull = new Float64Array(3 + 3 * WEIGHTED_NODES);

/**
 * E_xξ over the axes of ring and three line points, and −1/E_ξξ; undefined where the ring does not slide. For the contact that was
 * measured last, pressed by `force` [N] at this distance [m].
 */
export function slideOf(
  { positions }: StaticsProblem,
  contact: Contact,
  { force, distance }: { readonly force: number; readonly distance: number },
): { readonly pull: Float64Array; readonly softening: number } | undefined {
  if (!contact.slides || contact.xi <= 0 || contact.xi >= contact.points.length - 1) return undefined;
  const { w, d, b } = weights;
  let along = 0;
  let square = 0;
  let bent = 0;
  for (let c = 0; c < 3; c++) {
    tangent[c] = weighted(d, positions, contact, c);
    along += (gap[c]! / distance) * tangent[c]!;
    square += tangent[c]! * tangent[c]!;
    bent += (gap[c]! / distance) * weighted(b, positions, contact, c);
  }
  const across = force / distance;
  const curvature = across * square + (contact.stiffness - across) * along * along - force * bent;
  if (curvature < LEAST_CURVATURE_SHARE * across * square) return undefined;
  for (let c = 0; c < 3; c++) {
    const normal = gap[c]! / distance;
    stiff[c] = across * tangent[c]! + (contact.stiffness - across) * along * normal;
    pull[c] = -stiff[c]!;
    for (let k = 0; k < WEIGHTED_NODES; k++) pull[3 * (k + 1) + c] = w[k]! * stiff[c]! - d[k]! * force * normal;
  }
  return { pull, softening: -1 / curvature };
}
