/** The legs of an anchor as the engine has them, for the run in which one leg fails. */
import type { AnchorLeg } from "@secondline/engine";
import { type AnchorSide, chord, legForceFactor, type Rig } from "@secondline/rig";

/**
 * Stiffness of a leg per strain where the rig gives no stiffness of its anchor [N]. Assumed: a textile leg of 44 kN, at
 * 14 times its strength (slow pull of polyester rope, MoorPy's default properties, NREL).
 */
const LEG_STIFFNESS = 600e3;
/**
 * No leg is made stiffer than this [N/m]: some hundred times what any line is, it gives a load nothing to tell it from a
 * stiffer one, and a stiffer one would need a shorter step than the lines do.
 */
const MOST_LEG_STIFFNESS = 2e6;

/** Angle of a leg from the middle between the outermost [rad]: they are taken to be spread evenly. */
const legDirection = ({ legAngle, points }: AnchorSide, leg: number) =>
  legAngle * (0.5 - leg / Math.max(1, points.length - 1));

/**
 * Legs from the rock points to where they meet, in the plane of the line and the horizontal across it, so that the line pulls
 * along their middle. `strengths`: of the rock points, in order [N].
 */
export function anchorLegs(rig: Rig, end: "A" | "B", strengths: readonly number[]): AnchorLeg[] {
  const side = end === "A" ? rig.anchorA : rig.anchorB;
  const length = chord(rig);
  const outward = end === "A" ? -1 : 1;
  const angles = side.points.map((_, leg) => legDirection(side, leg));
  const along = angles.reduce((sum, angle) => sum + Math.cos(angle) ** 2, 0);
  const wanted = side.stiffness === undefined ? LEG_STIFFNESS / side.legLength : side.stiffness / along;
  const stiffness = Math.min(MOST_LEG_STIFFNESS, wanted);
  return angles.map((angle, leg) => {
    const back = (outward * side.legLength * Math.cos(angle)) / length;
    const rock = [back * rig.span, side.legLength * Math.sin(angle), back * rig.rise] as const;
    return { rock, stiffness, strength: strengths[leg]! };
  });
}

/**
 * Share of the whole load that each point is taken to carry [-]. One carries all of it; two share it by the angle between
 * their legs; of more, the outermost two are taken to carry all of it, for nothing makes a fixed anchor share evenly. `failed`
 * is the index of one that has failed. The line goes on pulling along what was the middle of all legs: when an outermost one
 * is gone, a leg that lies in the line's direction carries all of it, however narrow the angle of those that are left.
 */
export function legShare(side: AnchorSide, failed?: number): number {
  const last = side.points.length - 1;
  if (last === 0 || (last === 1 && failed !== undefined)) return 1;
  const share = legForceFactor(side.legAngle);
  return failed === 0 || failed === last ? Math.max(1, share) : share;
}
