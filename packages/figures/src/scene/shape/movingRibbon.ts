/** Ribbons that follow a moment of the run: main line, backup and leash. */
import type { LiveFrame } from "../liveFrame.ts";
import { createFineLine, fillFineLine } from "./fineLine.ts";
import { createRibbon, fillRibbon, type Ribbon } from "./ribbon.ts";
import { hangRope } from "./slackRope.ts";

export interface MovingRibbon {
  readonly ribbon: Ribbon;
  /** What the ribbon is drawn through, xyz each [m]. */
  readonly nodes: Float32Array;
  /** Brings ribbon and nodes to the present moment. */
  readonly update: () => void;
}

/** Main line or backup, drawn finer than it was computed. */
export function lineRibbon(live: LiveFrame, line: "main" | "backup"): MovingRibbon {
  const { span, rise, backup } = live.recording.problem;
  const fine = createFineLine(live, line);
  const chord = Math.hypot(span, rise);
  const length = line === "main" ? chord : chord * (1 + (backup?.slack ?? 0));
  const ribbon = createRibbon(fine.count, fine.fractions, 0, length);
  const { nodes } = fine;
  function update(): void {
    fillFineLine(fine, live);
    fillRibbon(ribbon, nodes, 0, fine.tensions, 0);
  }
  return { ribbon, nodes, update };
}

export const LEASH_POINTS = 33;

/** The leash: a rope of its true length from ring to harness, slack in a bow or taut. */
export function leashRibbon(live: LiveFrame): MovingRibbon {
  const { length } = live.recording.problem.leash;
  const fractions = Float32Array.from({ length: LEASH_POINTS }, (_, i) => i / (LEASH_POINTS - 1));
  const nodes = new Float32Array(LEASH_POINTS * 3);
  const tensions = new Float32Array(LEASH_POINTS - 1);
  const ribbon = createRibbon(LEASH_POINTS, fractions, 0, length);
  function update(): void {
    hangRope(nodes, LEASH_POINTS, live.positions, live.ring, live.positions, live.walker, length);
    tensions.fill(live.forces.leash);
    fillRibbon(ribbon, nodes, 0, tensions, 0);
  }
  return { ribbon, nodes, update };
}
