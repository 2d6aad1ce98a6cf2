/** What a hand holds in a drawing from the side: where it has it, what is wrong there, and when it is taken over. */
import type { GroundFault } from "@secondline/rig";
import { quantity } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import {
  groundFault,
  handStep,
  type Point,
  reachOfConnection,
  type Side,
  type Steps,
  withConnection,
  withoutPoint,
  withPoint,
  withPointAt,
} from "@secondline/workbench";
import { useState } from "react";
import type { Projection } from "./projection.ts";

const { say } = newRigWords;

export interface Held {
  readonly kind: "ground" | "connection";
  readonly index: number;
}

/** The document that is drawn. Moves with the same `group` are one step back. */
export interface SideHost {
  /** `moved`: the point that alone is another one; undefined where there is one more or less. */
  readonly ground: (points: readonly Point[], moved: number | undefined, group: string) => void;
  readonly connection: (metres: readonly number[], index: number, group: string) => void;
  /** Takes the moves of this group back; false where there is none. */
  readonly takeBack: (group: string) => boolean;
  /** The next move is a step of its own. */
  readonly done: () => void;
}

interface Draft {
  readonly held: Held;
  /** As the hand has it. */
  readonly side: Side;
  /** The last one on the way that can be. */
  readonly good: Side;
  readonly fault: GroundFault | undefined;
}

export interface SideDesk {
  /** With what is being dragged where the hand has it. */
  readonly shown: Side;
  readonly fault: GroundFault | undefined;
  readonly isHeld: boolean;
  readonly chosen: Held | undefined;
  readonly choose: (held: Held | undefined) => void;
  /** What was refused, or done, in words. */
  readonly told: string;
  readonly drag: (held: Held, x: number, z: number, projection: Projection) => void;
  readonly drop: () => void;
  readonly cancel: () => void;
  /** Moves by so many metres, as arrow keys do. */
  readonly nudge: (held: Held, dx: number, dz: number) => void;
  /** The keyboard goes elsewhere. */
  readonly leave: () => void;
  readonly takeBack: (held: Held) => boolean;
  readonly add: (x?: number) => void;
  readonly remove: (index: number) => void;
  readonly canRemove: (index: number) => boolean;
}

/** A press of an arrow key moves so far [m]. */
export const KEY_STEP = 0.5;

const groupOf = ({ kind, index }: Held): string => `drag ${kind} ${index}`;

export function useSideDesk(side: Side, host: SideHost): SideDesk {
  const [draft, setDraft] = useState<Draft>();
  const [chosen, choose] = useState<Held>();
  const [told, setTold] = useState("");
  const wasWrong = groundFault(side.points, side.site) !== undefined;

  function commit(held: Held, next: Side, group = groupOf(held)): void {
    if (held.kind === "ground") host.ground(next.points, held.index, group);
    else host.connection(next.connections, held.index, group);
  }
  /** What is wrong with a side that was not wrong before; a profile that was wrong may be mended step by step. */
  const faultOf = (next: Side) => (wasWrong ? undefined : groundFault(next.points, next.site));

  function drag(held: Held, x: number, z: number, projection: Projection): void {
    const { perMetre } = projection;
    const next = moved(side, held, [x, z], { x: handStep(perMetre.x), z: handStep(perMetre.z) });
    const fault = faultOf(next);
    setDraft((before) => ({ held, side: next, good: fault ? (before?.good ?? side) : next, fault }));
    setTold(fault ? say("side.refused", { why: faultWords(fault) }) : "");
  }
  function drop(): void {
    setDraft(undefined);
    if (!draft || draft.good === side) return;
    commit(draft.held, draft.good);
    host.done();
  }
  function cancel(): void {
    setDraft(undefined);
    setTold("");
  }
  function nudge(held: Held, dx: number, dz: number): void {
    const [x, z] = placeOf(side, held);
    const next = moved(side, held, [x + dx, z + dz], { x: KEY_STEP, z: KEY_STEP });
    const fault = faultOf(next);
    setTold(fault ? say("side.refused", { why: faultWords(fault) }) : "");
    if (!fault) commit(held, next);
  }
  function add(x?: number): void {
    const added = withPointAt(side.points, side.site, x);
    setTold(added ? say("side.added", { number: added.index + 1 }) : say("side.noRoom"));
    if (!added) return;
    host.ground(added.points, undefined, "");
    host.done();
    choose({ kind: "ground", index: added.index });
  }
  function remove(index: number): void {
    const left = withoutPoint(side.points, index, side.site);
    setTold(left ? say("side.removed", { number: index + 1 }) : say("side.needed"));
    if (!left) return;
    host.ground(left, undefined, "");
    host.done();
    choose(undefined);
  }
  return {
    shown: draft?.side ?? side,
    fault: draft ? draft.fault : groundFault(side.points, side.site),
    isHeld: draft !== undefined,
    chosen: chosen && exists(side, chosen) ? chosen : undefined,
    choose,
    told,
    drag,
    drop,
    cancel,
    nudge,
    leave: host.done,
    takeBack(held) {
      setTold("");
      return host.takeBack(groupOf(held));
    },
    add,
    remove,
    canRemove: (index) => withoutPoint(side.points, index, side.site) !== undefined,
  };
}

const exists = (side: Side, { kind, index }: Held): boolean =>
  index < (kind === "ground" ? side.points : side.connections).length;

function moved(side: Side, held: Held, [x, z]: Point, step: Steps): Side {
  const { site, points, connections } = side;
  return held.kind === "ground"
    ? { ...side, points: withPoint(points, held.index, [x, z], { site, step }) }
    : { ...side, connections: withConnection(connections, held.index, x, { span: site.span, step: step.x }) };
}

export const placeOf = (side: Side, { kind, index }: Held): Point =>
  kind === "ground" ? side.points[index]! : [side.connections[index]!, 0];

/** Where something stands, in words. */
export function placeWords(side: Side, held: Held): string {
  const [x, z] = placeOf(side, held);
  const from = say("side.fromA", { distance: quantity.along(x) });
  if (held.kind === "connection") return from;
  const key = z > 0 ? "side.above" : "side.below";
  return say(key, { from, height: quantity.along(Math.abs(z)) });
}

/** Range of what a slider says of itself: the height of a point, the distance of a connection [m]. */
export function rangeOf(side: Side, held: Held): { readonly now: number; readonly min: number; readonly max: number } {
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
