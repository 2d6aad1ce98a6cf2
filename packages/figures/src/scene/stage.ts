/** Data shared by everything in one scene: the moment, the gap, the notes. */

import type { Recording } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import type { GaveWay } from "@secondline/scenarios";
import { createLiveFrame, type LiveFrame } from "./liveFrame.ts";
import { createNotes, type Notes } from "./notes/notes.ts";
import { type Gap, gapSection } from "./shape/gap.ts";

export interface Stage {
  readonly recording: Recording;
  readonly rig: Rig;
  readonly live: LiveFrame;
  /** Equilibrium before the event. */
  readonly before: LiveFrame;
  readonly previous: LiveFrame | undefined;
  readonly gap: Gap;
  readonly notes: Notes;
}

export function createStage(
  recording: Recording,
  rig: Rig,
  previous: Recording | undefined,
  gaveWay: readonly GaveWay[] = [],
): Stage {
  const gap = gapSection(rig.ground, rig.span, rig.rise);
  return {
    recording,
    rig,
    live: createLiveFrame(recording, gap),
    before: createLiveFrame(recording),
    previous: previous ? createLiveFrame(previous, gap) : undefined,
    gap,
    notes: createNotes(recording, rig, gap, gaveWay),
  };
}

/** True once the walker is visibly away from where the run began. */
export function hasMoved({ live, before }: Stage): boolean {
  const dx = live.positions[live.walker]! - before.positions[before.walker]!;
  const dz = live.positions[live.walker + 2]! - before.positions[before.walker + 2]!;
  return dx * dx + dz * dz > 0.25;
}
