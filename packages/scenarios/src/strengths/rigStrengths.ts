/** What a study takes from the strength package: every part, and the strengths at which parts give way in a run. */
import { backupNaturalLength, mainNaturalLength, type Rig } from "@secondline/rig";
import {
  type BreakTest,
  factorsFromLog,
  type PartStrength,
  partStrengths,
  type StrengthZone,
} from "@secondline/strength";
import type { BreakingStrengths, LineBreaking } from "./breakingStrengths.ts";

export interface RigStrengths {
  /** The parts in the order of the load's way, from harness to rock. */
  readonly parts: readonly PartStrength[];
  readonly breaking: BreakingStrengths;
  readonly mainLength: number;
  readonly backupLength: number;
  /** Weakest places of the main line's webbing, weakest first, as fractions of its natural length [-]. */
  readonly weakPlaces: readonly number[];
}

/** How many weak places are each given their own what-ifs. */
const MOST_WEAK_PLACES = 3;
/** Weak places closer than this are one [m]. */
const WEAK_PLACES_APART = 2;
/** A zone counts as weak when it holds this much less than the strongest [-]. */
const WEAK_ZONE_SHARE = 0.95;
/** Length of webbing at an anchor that parts at the strength of the line's end [m]. */
const END_LENGTH = 0.1;

/**
 * Strengths of a rig as it is written down; central values are what breaks in a run. Own break tests stand in for the
 * built-in factors where there are some.
 */
export function rigStrengths(rig: Rig, breakTests: readonly BreakTest[] = []): RigStrengths {
  const mainLength = mainNaturalLength(rig);
  const backupLength = backupNaturalLength(rig);
  const parts = breakTests.length > 0 ? partStrengths(rig, factorsFromLog(breakTests)) : partStrengths(rig);
  const find = (id: string) => parts.find((part) => part.id === id);
  const main = find("main")!;
  const backup = find("backup");
  const rings = parts.filter((part) => part.id === "ring" || part.id.startsWith("ring."));
  const breaking: BreakingStrengths = {
    main: lineBreaking(main.zones!, mainLength, find("endA")!, find("endB")!),
    ...(backup
      ? { backup: lineBreaking(backup.zones!, backupLength, find("backup.endA")!, find("backup.endB")!) }
      : {}),
    leash: find("leash")!.strength,
    ring: Math.max(...rings.map((ring) => ring.strength)),
    connections: (rig.backup?.connections ?? []).map((_, i) => find(`connection.${i}`)!.strength),
    points: {
      A: rig.anchorA.points.map((_, i) => find(`anchorA.points.${i}`)!.strength),
      B: rig.anchorB.points.map((_, i) => find(`anchorB.points.${i}`)!.strength),
    },
  };
  return { parts, breaking, mainLength, backupLength, weakPlaces: weakPlaces(main.zones!, mainLength) };
}

/** The webbing's zones, and a short stretch at either anchor that holds what clamp, loop or knot there holds. */
function lineBreaking(
  zones: readonly StrengthZone[],
  length: number,
  endA: PartStrength,
  endB: PartStrength,
): LineBreaking {
  const strongest = Math.max(...zones.map((zone) => zone.strength));
  const weak = zones
    .filter((zone) => zone.strength < strongest)
    .map((zone) => ({ from: zone.from / length, to: Math.min(1, zone.to / length), strength: zone.strength }));
  const end = Math.min(0.5, END_LENGTH / length);
  if (endA.strength < strongest) weak.push({ from: 0, to: end, strength: endA.strength });
  if (endB.strength < strongest) weak.push({ from: 1 - end, to: 1, strength: endB.strength });
  return { strength: strongest, zones: weak };
}

function weakPlaces(zones: readonly StrengthZone[], length: number): readonly number[] {
  const strongest = Math.max(...zones.map((zone) => zone.strength));
  const places: number[] = [];
  const weak = zones.filter((zone) => zone.strength < WEAK_ZONE_SHARE * strongest);
  for (const zone of weak.sort((a, b) => a.strength - b.strength || a.from - b.from)) {
    const middle = (zone.from + zone.to) / 2;
    if (places.length < MOST_WEAK_PLACES && places.every((place) => Math.abs(place - middle) >= WEAK_PLACES_APART)) {
      places.push(middle);
    }
  }
  return places.map((place) => place / length);
}
