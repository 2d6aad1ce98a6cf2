/** Where a part of the rig is at the moment. */
import type { Recording } from "@secondline/engine";
import type { LiveFrame } from "../liveFrame.ts";
import type { Rig } from "../sceneProps.ts";

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

/** Writes the place of the part with this outcome id; false when the scene does not show it. */
export function partPlace(id: string, live: LiveFrame, rig: Rig, out: Float64Array): boolean {
  const offset = offsetOf(id, live, rig);
  if (offset < 0) return false;
  for (let c = 0; c < 3; c++) out[c] = live.positions[offset + c]!;
  if (id === "leash")
    for (let c = 0; c < 3; c++) out[c] = 0.5 * (live.positions[live.ring + c]! + live.positions[live.walker + c]!);
  return true;
}

function offsetOf(id: string, live: LiveFrame, rig: Rig): number {
  const [part, index] = id.split(".");
  const { mainNodes, backupNodes } = live;
  if (part === "ring" || part === "leash") return live.ring;
  if (part === "harness" || part === "walker") return live.walker;
  if (part === "main") return 3 * Math.round(0.72 * (mainNodes - 1));
  if (part === "backup" && backupNodes > 0) return 3 * (mainNodes + Math.round(0.8 * (backupNodes - 1)));
  if (part === "anchorA" || part === "endA" || part === "backupEndA") return 0;
  if (part === "anchorB" || part === "endB" || part === "backupEndB") return 3 * (mainNodes - 1);
  if (part === "connection" || part === "tape") {
    const parts = rig.backup?.connections.filter((c) => c.kind === part) ?? [];
    const at = parts[Number(index ?? 0)]?.at;
    return at === undefined ? -1 : 3 * nodeNear(live.recording, "main", at);
  }
  return -1;
}
