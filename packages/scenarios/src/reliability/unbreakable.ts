/**
 * Strengths that nothing exceeds, for runs that ask what every part would have to carry.
 *
 * Until the first part fails, a run with real parts and one with parts that cannot fail are the same run. So some part fails
 * exactly when in the run without failures some load exceeds its strength: the chance that any part fails needs no other
 * runs. A run in which a part has failed says nothing of that kind: what failed shows its own strength as its load, and what
 * comes after it depends on it. What follows on a failure is therefore not in these chances. Tapes are made to part and
 * do, at their central strength; the main line fails as the what-if says.
 */
import type { Rig } from "@secondline/rig";
import type { LineBreaking } from "../breakingStrengths.ts";
import type { RigStrengths } from "../rigStrengths.ts";

const NEVER = Number.POSITIVE_INFINITY;
const WHOLE: LineBreaking = { strength: NEVER, zones: [] };

export function unbreakable(rig: Rig, strengths: RigStrengths): RigStrengths {
  const { breaking } = strengths;
  const kinds = (rig.backup?.connections ?? []).map((one) => one.kind);
  return {
    ...strengths,
    parts: strengths.parts.map((part) => ({
      ...part,
      strength: NEVER,
      ...(part.zones ? { zones: part.zones.map((zone) => ({ ...zone, strength: NEVER })) } : {}),
    })),
    breaking: {
      ...breaking,
      main: WHOLE,
      ...(breaking.backup ? { backup: WHOLE } : {}),
      leash: NEVER,
      ring: NEVER,
      points: { A: breaking.points.A.map(() => NEVER), B: breaking.points.B.map(() => NEVER) },
      connections: breaking.connections.map((strength, i) => (kinds[i] === "tape" ? strength : NEVER)),
    },
  };
}
