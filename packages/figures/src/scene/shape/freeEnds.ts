/**
 * Keeps the free ends of a parted line out of the drawn rock, because the computed line ignores the ground. Between the parted
 * place and the next place that holds the line, nodes inside the rock are drawn on its face. No computed number changes.
 */
import type { Recording } from "@secondline/engine";
import { type Cuff, cuffsOf } from "./cuffs.ts";
import { type Gap, groundAt } from "./gap.ts";

export interface FreeEnds {
  /** Moves the free nodes at a moment; `positions` (xyz) and `tensions` as in a live frame. */
  readonly keepOut: (moment: Moment) => void;
}

interface Moment {
  readonly time: number;
  readonly mainNodes: number;
  readonly backupNodes: number;
  readonly positions: Float32Array;
  readonly tensions: Float32Array;
  readonly ringAt: Float32Array;
}

/** Distance of a drawn line from the rock face [m]. */
const DISTANCE_OFF_FACE = 0.06;

export function freeEndsOf(recording: Recording, gap: Gap): FreeEnds {
  const { frames } = recording;
  const lines = [
    { name: "main", first: 0, count: frames.mainNodes, held: cuffsOf(recording, "main"), ring: 0 },
    { name: "backup", first: frames.mainNodes, count: frames.backupNodes, held: cuffsOf(recording, "backup"), ring: 1 },
  ] as const;
  const firstElement = [0, frames.mainNodes - 1];
  return {
    keepOut(moment) {
      for (let k = 0; k < lines.length; k++) {
        const { first, count, held, ring } = lines[k]!;
        for (let e = 0; e + 1 < count; e++) {
          if (!Number.isNaN(moment.tensions[firstElement[k]! + e]!)) continue;
          const ringNode = moment.ringAt[ring]! < 0 ? -1 : first + Math.round(moment.ringAt[ring]! * (count - 1));
          follow(moment, gap, held, ringNode, first + e, -1, first);
          follow(moment, gap, held, ringNode, first + e + 1, 1, first + count - 1);
        }
      }
    },
  };
}

/** Goes from a free node to the next place that holds the line: a connection, a tape, the ring, or an anchor. */
function follow(
  moment: Moment,
  gap: Gap,
  held: readonly Cuff[],
  ringNode: number,
  from: number,
  step: 1 | -1,
  anchor: number,
): void {
  for (let node = from; node !== anchor && node !== ringNode; node += step) {
    if (held.some((one) => one.node === node && moment.time < one.until)) return;
    keepOutOfRock(moment.positions, 3 * node, gap);
  }
}

/** A place in the rock is moved to the nearest one on its face, in the plane of the line. */
export function keepOutOfRock(positions: Float32Array, at: number, gap: Gap): void {
  const [x, z] = [positions[at]!, positions[at + 2]!];
  if (z >= groundAt(gap, x)) return;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < gap.x.length; i++) {
    const [x0, z0] = [gap.x[i - 1]!, gap.z[i - 1]!];
    const [dx, dz] = [gap.x[i]! - x0, gap.z[i]! - z0];
    const length = dx * dx + dz * dz;
    if (length === 0) continue;
    const share = Math.min(Math.max(((x - x0) * dx + (z - z0) * dz) / length, 0), 1);
    const [px, pz] = [x0 + share * dx, z0 + share * dz];
    const away = Math.hypot(px - x, pz - z);
    if (away >= least) continue;
    least = away;
    // The free side lies to the left of the section as it runs from A to B.
    const off = DISTANCE_OFF_FACE / Math.sqrt(length);
    positions[at] = px - off * dz;
    positions[at + 2] = pz + off * dx;
  }
}
