/**
 * Strength of a bolt by the angle between the pull and its axis. EN 959 asks for an axial and a radial strength and says
 * nothing of angles between. There the two parts of the pull are taken to use up the bolt together, in a straight line: N /
 * axial + V / radial = 1. Rules for fastenings (EN 1992-4, from memory) allow a sum of up to 1.2, so this rule lies on the safe
 * side of them.
 */
import type { Basis } from "@secondline/rig";
import { noteFact } from "../noteFacts.ts";
import { constant } from "./constantValues.ts";
import { fixedFactor, type StrengthFactor } from "./factor.ts";

const DIRECTION_SOURCE =
  "EN 959:2018, 4.3.1 and 4.3.2: 15 kN axially, 25 kN radially; between them both parts of the pull count in a straight line, assumed";
const BLANK_NOTE = "the direction of the pull on the bolt is not written down: the worst one counts";
/** The two strengths are published; the values between them are assumed. */
const basisAt = (angle: number): Basis => ({ kind: angle === 0 ? "published" : "assumed", note: DIRECTION_SOURCE });

/** Closer than this to straight across, nothing of the pull counts as axial [rad]. */
const STRAIGHT_ACROSS_ANGLE = 1e-9;

function share(angle: number): number {
  return 1 / (Math.cos(angle) * (constant("bolt.radial") / constant("bolt.axial")) + Math.sin(angle));
}

/** The angle at which a bolt holds least: tan = axial / radial [rad]. */
const worstAngle = () => Math.atan(constant("bolt.axial") / constant("bolt.radial"));

/**
 * The factor of a pull's direction on the radial strength, as a list of one; empty when the pull goes straight across. `angle`:
 * from the axis [rad]; if undefined, the worst angle counts and the factor names `field`.
 */
export function boltDirectionFactors(angle: number | undefined, field: string): StrengthFactor[] {
  const spread = constant("bolt.direction.spread");
  if (angle === undefined) {
    const note = noteFact("basis.standIn", { why: { brought: BLANK_NOTE }, note: { brought: DIRECTION_SOURCE } });
    const basis: Basis = { kind: "assumed", note };
    const value = share(worstAngle());
    return [fixedFactor({ name: "direction of pull", value, spread, basis, noData: true, blank: { field, best: 1 } })];
  }
  if (angle >= Math.PI / 2 - STRAIGHT_ACROSS_ANGLE) return [];
  return [fixedFactor({ name: "direction of pull", value: share(angle), spread, basis: basisAt(angle) })];
}

/**
 * The worst angle that a leg can make with a bolt's axis when the line makes `axisAngle` with it and the legs lie within `legAngle` of
 * one another [rad].
 */
export function worstLegAngle(axisAngle: number, legAngle: number): number {
  const half = legAngle / 2;
  const [least, most] = [Math.max(0, axisAngle - half), Math.min(Math.PI / 2, axisAngle + half)];
  const candidates = [least, most, ...(least < worstAngle() && worstAngle() < most ? [worstAngle()] : [])];
  return candidates.reduce((worst, angle) => (share(angle) < share(worst) ? angle : worst));
}
