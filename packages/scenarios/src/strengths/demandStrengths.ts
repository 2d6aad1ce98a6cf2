/**
 * Strengths for runs that ask what every part would have to carry: nothing gives way but the tapes, which are made to, and
 * what the event itself makes give way.
 *
 * Until the first part fails, a run with real parts and one with parts that cannot fail are the same run. So a part fails
 * exactly when its load in the run without failures exceeds what it holds. A run in which a part has failed says nothing of
 * that kind: what failed shows its own strength as its load. What follows on a failure is an event of its own.
 */
import type { Rig } from "@secondline/rig";
import type { BreakingStrengths, LineBreaking } from "./breakingStrengths.ts";

export interface DemandStrengths {
  readonly main: LineBreaking;
  readonly backup: LineBreaking;
  /** [N] */
  readonly leash: number;
  readonly ring: number;
  /** Strengths by index in the rig's connections [N]. */
  readonly connections: Readonly<Record<number, number>>;
}

export const UNBREAKABLE_STRENGTH: number = Number.POSITIVE_INFINITY;
export const UNBREAKABLE_LINE: LineBreaking = { strength: UNBREAKABLE_STRENGTH, zones: [] };

/** Strengths of which none is reached, but those of the tapes. */
export function demandStrengths(rig: Rig, { breaking }: { readonly breaking: BreakingStrengths }): BreakingStrengths {
  const kinds = (rig.backup?.connections ?? []).map((one) => one.kind);
  return {
    main: UNBREAKABLE_LINE,
    ...(breaking.backup ? { backup: UNBREAKABLE_LINE } : {}),
    leash: UNBREAKABLE_STRENGTH,
    ring: UNBREAKABLE_STRENGTH,
    connections: breaking.connections.map((strength, i) => (kinds[i] === "tape" ? strength : UNBREAKABLE_STRENGTH)),
    points: {
      A: breaking.points.A.map(() => UNBREAKABLE_STRENGTH),
      B: breaking.points.B.map(() => UNBREAKABLE_STRENGTH),
    },
  };
}
