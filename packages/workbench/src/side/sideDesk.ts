/** A hand in a drawing from the side: what it has where, and when it is taken over. */
import type { GroundFault } from "@secondline/rig";
import { newRigWords } from "@secondline/words/newRig";
import { createStore, type StoreApi } from "zustand/vanilla";
import { handStep } from "./connections.ts";
import { groundFault, withoutPoint, withPointAt } from "./ground.ts";
import { exists, faultWords, groupOf, type Held, KEY_STEP, movedSide, placeOfHeld, type SideHost } from "./held.ts";
import type { Projection } from "./projection.ts";
import type { SideView } from "./side.ts";

const { say } = newRigWords;

interface Draft {
  readonly held: Held;
  /** The drawing with the point where the hand has dragged it. */
  readonly side: SideView;
  /** The last valid drawing on the way. */
  readonly good: SideView;
  readonly fault: GroundFault | undefined;
}

export interface SideDeskState {
  readonly draft: Draft | undefined;
  readonly chosen: Held | undefined;
  /** What was refused, or done, in words. */
  readonly told: string;
}

export interface SideDesk {
  readonly store: StoreApi<SideDeskState>;
  readonly choose: (held: Held | undefined) => void;
  readonly drag: (held: Held, x: number, z: number, projection: Pick<Projection, "perMetre">) => void;
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

/** What a drawing shows. */
export interface SideInSight {
  /** The drawing, with the dragged point where the hand has it. */
  readonly shown: SideView;
  readonly fault: GroundFault | undefined;
  readonly isHeld: boolean;
  readonly chosen: Held | undefined;
  readonly told: string;
}

/** `side`: as the document has it. */
export const sideInSight = ({ draft, chosen, told }: SideDeskState, side: SideView): SideInSight => ({
  shown: draft?.side ?? side,
  fault: draft ? draft.fault : groundFault(side.points, side.site),
  isHeld: draft !== undefined,
  chosen: chosen && exists(side, chosen) ? chosen : undefined,
  told,
});

/** `given`: the side as the document has it now, and the document. */
export function createSideDesk(given: () => { readonly side: SideView; readonly host: SideHost }): SideDesk {
  const store = createStore<SideDeskState>(() => ({ draft: undefined, chosen: undefined, told: "" }));
  const tell = (told: string) => store.setState({ told });
  const tellFault = (fault: GroundFault | undefined) =>
    tell(fault ? say("side.refused", { why: faultWords(fault) }) : "");

  function commit(held: Held, next: SideView): void {
    const { host } = given();
    if (held.kind === "ground") host.ground(next.points, held.index, groupOf(held));
    else host.connection(next.connections, held.index, groupOf(held));
  }
  /** What is wrong with a side that was not wrong before; a profile that was wrong may be mended step by step. */
  function faultOf(next: SideView): GroundFault | undefined {
    const { side } = given();
    return groundFault(side.points, side.site) ? undefined : groundFault(next.points, next.site);
  }
  function drag(held: Held, x: number, z: number, { perMetre }: Pick<Projection, "perMetre">): void {
    const { side } = given();
    const next = movedSide(side, held, [x, z], { x: handStep(perMetre.x), z: handStep(perMetre.z) });
    const fault = faultOf(next);
    const good = fault ? (store.getState().draft?.good ?? side) : next;
    store.setState({ draft: { held, side: next, good, fault } });
    tellFault(fault);
  }
  function drop(): void {
    const { draft } = store.getState();
    const { side, host } = given();
    store.setState({ draft: undefined });
    if (!draft || draft.good === side) return;
    commit(draft.held, draft.good);
    host.done();
  }
  function nudge(held: Held, dx: number, dz: number): void {
    const { side } = given();
    const [x, z] = placeOfHeld(side, held);
    const next = movedSide(side, held, [x + dx, z + dz], { x: KEY_STEP, z: KEY_STEP });
    const fault = faultOf(next);
    tellFault(fault);
    if (!fault) commit(held, next);
  }
  function add(x?: number): void {
    const { side, host } = given();
    const added = withPointAt(side.points, side.site, x);
    tell(added ? say("side.added", { number: added.index + 1 }) : say("side.noRoom"));
    if (!added) return;
    host.ground(added.points, undefined, "");
    host.done();
    store.setState({ chosen: { kind: "ground", index: added.index } });
  }
  function remove(index: number): void {
    const { side, host } = given();
    const left = withoutPoint(side.points, index, side.site);
    tell(left ? say("side.removed", { number: index + 1 }) : say("side.needed"));
    if (!left) return;
    host.ground(left, undefined, "");
    host.done();
    store.setState({ chosen: undefined });
  }
  return {
    store,
    choose: (chosen) => store.setState({ chosen }),
    drag,
    drop,
    cancel: () => store.setState({ draft: undefined, told: "" }),
    nudge,
    leave: () => given().host.done(),
    takeBack(held) {
      tell("");
      return given().host.takeBack(groupOf(held));
    },
    add,
    remove,
    canRemove(index) {
      const { side } = given();
      return withoutPoint(side.points, index, side.site) !== undefined;
    },
  };
}
