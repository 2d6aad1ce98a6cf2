/** One anchor at the moment: its rock points, the legs from them to the master point, and the master point. */
import type { Stage } from "../stage.ts";
import { createLegs } from "./anchorLegs.ts";
import { type AnchorShape, anchorShape } from "./anchorShape.ts";
import { createMaster, type MasterPoint } from "./masterPoint.ts";
import type { Ribbon } from "./ribbon.ts";

export interface AnchorGear {
  readonly shape: AnchorShape;
  /** The legs. */
  readonly ribbon: Ribbon;
  readonly master: MasterPoint;
  /** Brings legs and master point to the present moment. */
  readonly update: () => void;
}

export function createAnchorGear({ live, rig, recording, gap }: Stage, side: "A" | "B"): AnchorGear {
  const shape = anchorShape(side, rig[`anchor${side}`], recording.problem.anchors?.[side], gap);
  const legs = createLegs(shape.rock, side, recording.events);
  const master = createMaster(live, shape);
  function update(): void {
    master.update();
    legs.update(master.points, live.time);
  }
  return { shape, ribbon: legs.ribbon, master, update };
}
