/** The place of a part of the rig at the moment. */
import type { Recording } from "@secondline/engine";
import { partRef, type Rig } from "@secondline/rig";
import type { LiveFrame } from "../liveFrame.ts";

/** Index of the node of a line nearest to a fraction of its natural length; connections are sought on the main line. */
export function nodeNear(recording: Recording, part: string, fraction: number): number {
  const { mainNodes, backupNodes, fractions } = recording.frames;
  if (part === "anchorA") return 0;
  if (part === "anchorB") return mainNodes - 1;
  const onBackup = part === "backup" && backupNodes > 0;
  const from = onBackup ? mainNodes : 0;
  const to = onBackup ? mainNodes + backupNodes : mainNodes;
  let best = from;
  for (let i = from; i < to; i++)
    if (Math.abs(fractions[i]! - fraction) < Math.abs(fractions[best]! - fraction)) best = i;
  return best;
}

/** The node that the ring is at; −1: it is off both lines. */
export function ringNode({ recording, ringAt }: LiveFrame): number {
  const [onMain, onBackup] = [ringAt[0]!, ringAt[1]!];
  if (onMain >= 0) return nodeNear(recording, "main", onMain);
  return onBackup < 0 ? -1 : nodeNear(recording, "backup", onBackup);
}

/**
 * Writes the place of the part with this outcome id; false when the scene does not show it. `share`: of webbing, the place along its
 * natural length from A [-].
 */
export function partPlace(id: string, live: LiveFrame, rig: Rig, out: Float64Array, share?: number): boolean {
  const offset = offsetOf(id, live, rig, share);
  if (offset < 0) return false;
  for (let c = 0; c < 3; c++) out[c] = live.positions[offset + c]!;
  if (id === "leash")
    for (let c = 0; c < 3; c++) out[c] = 0.5 * (live.positions[live.ring + c]! + live.positions[live.walker + c]!);
  return true;
}

function offsetOf(id: string, live: LiveFrame, rig: Rig, share: number | undefined): number {
  const ref = partRef(id);
  if (!ref) return -1;
  const { mainNodes, backupNodes } = live;
  const anchor = (name: "A" | "B") => (name === "A" ? 0 : 3 * (mainNodes - 1));
  switch (ref.kind) {
    case "ring":
    case "leash":
      return live.ring;
    case "harness":
      return live.walker;
    case "webbing":
      if (share !== undefined && (ref.line === "main" || backupNodes > 0))
        return 3 * nodeNear(live.recording, ref.line, share);
      if (ref.line === "main") return 3 * Math.round(0.72 * (mainNodes - 1));
      return backupNodes > 0 ? 3 * (mainNodes + Math.round(0.8 * (backupNodes - 1))) : -1;
    case "end":
      return anchor(ref.end);
    case "hardware":
    case "point":
      return anchor(ref.anchor);
    case "connection": {
      const at = rig.backup?.connections[ref.index]?.at;
      return at === undefined ? -1 : 3 * nodeNear(live.recording, "main", at);
    }
  }
}
