/** What a hand holds in a drawing from the side: where it lies, how it moves, and what is wrong there, in words. */
import type { GroundFault } from "@secondline/rig";
import { quantity } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import { reachOfConnection, withConnection } from "./connections.ts";
import { type Steps, withPoint } from "./ground.ts";
import type { Point, SideView } from "./side.ts";

const { say } = newRigWords;

export interface Held {
  readonly kind: "ground" | "connection";
  readonly index: number;
}

/** The document that is drawn. Moves with the same `group` are one step back. */
export interface SideHost {
  /** `moved`: the only point that changed; undefined if a point was added or taken away. */
  readonly ground: (points: readonly Point[], moved: number | undefined, group: string) => void;
  readonly connection: (metres: readonly number[], index: number, group: string) => void;
  /** Takes the moves of this group back; false if the group has no moves. */
  readonly takeBack: (group: string) => boolean;
  /** The next move is a step of its own. */
  readonly done: () => void;
}

/** A press of an arrow key moves so far [m]. */
export const KEY_STEP = 0.5;

/** Moves of what is held that are one step back. */
export const groupOf = ({ kind, index }: Held): string => `drag ${kind} ${index}`;

/** Whether there still is what was chosen. */
export const exists = (side: SideView, { kind, index }: Held): boolean =>
  index < (kind === "ground" ? side.points : side.connections).length;

/** The side with what is held where a hand has it, in steps. */
export function movedSide(side: SideView, held: Held, [x, z]: Point, step: Steps): SideView {
  const { site, points, connections } = side;
  return held.kind === "ground"
    ? { ...side, points: withPoint(points, held.index, [x, z], { site, step }) }
    : { ...side, connections: withConnection(connections, held.index, x, { span: site.span, step: step.x }) };
}

/** Distance from anchor A and height of what is held [m]. */
export const placeOfHeld = (side: SideView, { kind, index }: Held): Point =>
  kind === "ground" ? side.points[index]! : [side.connections[index]!, 0];

/** Where something stands, in words. */
export function heldWords(side: SideView, held: Held): string {
  const [x, z] = placeOfHeld(side, held);
  const from = say("side.fromA", { distance: quantity.along(x) });
  if (held.kind === "connection") return from;
  const key = z > 0 ? "side.above" : "side.below";
  return say(key, { from, height: quantity.along(Math.abs(z)) });
}

/** Range of what a slider says of itself: the height of a point, the distance of a connection [m]. */
export function rangeOf(
  side: SideView,
  held: Held,
): { readonly now: number; readonly min: number; readonly max: number } {
  if (held.kind === "connection") {
    const [min, max] = reachOfConnection(side.connections, held.index, side.site.span);
    return { now: side.connections[held.index]!, min, max };
  }
  const now = side.points[held.index]![1];
  return { now, min: Math.min(now, -1000), max: Math.max(now, side.site.rise, 0) };
}

export function faultWords({ kind, x, limit }: GroundFault): string {
  const values = { distance: quantity.along(x), limit: quantity.along(limit) };
  return say(`side.fault.${kind}`, values);
}
