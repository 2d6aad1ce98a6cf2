/** The place of an anchor's master point at the moment, and the direction of the pull on it. */
import type { LiveFrame } from "../liveFrame.ts";
import type { AnchorShape } from "./anchorShape.ts";

export interface MasterPoint {
  /** The master point, then a point on the line that pulls at it, xyz each [m]. */
  readonly points: Float32Array;
  readonly update: () => void;
}

/**
 * A main line that is severed at its very end takes its last node with it. The anchor stays with the backup, or at its old
 * place.
 */
export function createMaster(live: LiveFrame, shape: AnchorShape): MasterPoint {
  const { recording, mainNodes, backupNodes, positions } = live;
  const atA = shape.side === "A";
  const points = new Float32Array(6);
  const freed = recording.events.find(
    (e) => e.part === "main" && e.kind === "cut" && (atA ? (e.at ?? 1) < 0.002 : (e.at ?? 0) > 0.998),
  );
  const main = atA ? 0 : mainNodes - 1;
  const backup = atA ? mainNodes : mainNodes + backupNodes - 1;
  const inward = atA ? 1 : -1;

  function update(): void {
    const holdsMain = freed === undefined || live.time < freed.time;
    const node = backupNodes > 1 ? backup : main;
    const pulling = holdsMain ? main : node;
    for (let c = 0; c < 3; c++) {
      points[c] = holdsMain || backupNodes > 1 ? positions[3 * node + c]! : shape.master[c]!;
      points[3 + c] = positions[3 * (pulling + inward) + c]!;
    }
    // If no line pulls any more, the parts that hang there point down.
    if (!holdsMain && backupNodes <= 1) points.set([points[0]!, points[1]!, points[2]! - 1], 3);
  }
  update();
  return { points, update };
}
