/** A hand in a drawing from the side: what it has where, and when it is taken over. */
import type { GroundFault } from "@secondline/rig";
import { newRigWords } from "@secondline/words/newRig";
import {
  exists,
  faultWords,
  groundFault,
  groupOf,
  type Held,
  handStep,
  KEY_STEP,
  movedSide,
  type Projection,
  placeOfHeld,
  type Side,
  type SideHost,
  withoutPoint,
  withPointAt,
} from "@secondline/workbench";
import { useState } from "react";

const { say } = newRigWords;

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
    const next = movedSide(side, held, [x, z], { x: handStep(perMetre.x), z: handStep(perMetre.z) });
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
    const [x, z] = placeOfHeld(side, held);
    const next = movedSide(side, held, [x + dx, z + dz], { x: KEY_STEP, z: KEY_STEP });
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
