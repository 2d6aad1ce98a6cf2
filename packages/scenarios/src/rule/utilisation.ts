/**
 * How much of a part's strength a run uses: tension over strength at the place where this ratio is largest. Strength is what 95 % of such
 * parts reach.
 */
import { isTape, type PartId, type Rig } from "@secondline/rig";
import type { PartStrength, StrengthZone } from "@secondline/strength";
import type { GoodRun, PeaksAlongLine } from "../facts/runFacts.ts";
import { halfElement } from "../run/elements.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";

export interface Utilisation {
  /** Load over strength [-]. */
  readonly share: number;
  /** [N] */
  readonly load: number;
  /** What 95 % of such parts reach, and the central value [N]. */
  readonly strength5: number;
  readonly strength: number;
  /** The place on a webbing in natural metres from A, and what lies there. */
  readonly at?: number;
  readonly zone?: StrengthZone;
}

/** A load below this is none [N]. */
const LEAST_LOAD = 1;

const KNOWN_UTILISATIONS = new WeakMap<PartStrength, WeakMap<GoodRun, { readonly of: Utilisation | undefined }>>();

/** Undefined where the run did not load the part. A search asks the same of a run again and again: it is worked out once. */
export function utilisation(part: PartStrength, run: GoodRun, length: number): Utilisation | undefined {
  const runs = KNOWN_UTILISATIONS.get(part) ?? new WeakMap<GoodRun, { readonly of: Utilisation | undefined }>();
  KNOWN_UTILISATIONS.set(part, runs);
  const known = runs.get(run) ?? { of: workedOut(part, run, length) };
  runs.set(run, known);
  return known.of;
}

function workedOut(part: PartStrength, run: GoodRun, length: number): Utilisation | undefined {
  if (part.zones) return alongWebbing(part.zones, run.webbing[part.id === "backup" ? "backup" : "main"], length);
  const load = run.loads[part.id as PartId];
  if (load === undefined || load < LEAST_LOAD) return undefined;
  const { strength5, strength } = part;
  return { share: load / strength5, load, strength5, strength };
}

function alongWebbing(
  zones: readonly StrengthZone[],
  { at, peak }: PeaksAlongLine,
  length: number,
): Utilisation | undefined {
  let worst: Utilisation | undefined;
  for (let e = 0; e < at.length; e++) {
    const load = peak[e]!;
    if (load < LEAST_LOAD) continue;
    const middle = at[e]! * length;
    const half = halfElement(at, e) * length;
    for (const zone of zones) {
      if (zone.from >= middle + half || zone.to <= middle - half) continue;
      const share = load / zone.strength5;
      if (worst && share <= worst.share) continue;
      const inside = middle >= zone.from && middle <= zone.to ? middle : (zone.from + zone.to) / 2;
      worst = { share, load, strength5: zone.strength5, strength: zone.strength, at: inside, zone };
    }
  }
  return worst;
}

/** Natural length of the line that a part's places lie on [m]. */
export function lengthOf(strengths: RigStrengths, part: PartStrength): number {
  return part.id === "backup" ? strengths.backupLength : strengths.mainLength;
}

/** Every part that a verdict is on: all but the tapes. */
export function judgedParts(rig: Rig, strengths: RigStrengths): readonly PartStrength[] {
  return strengths.parts.filter((part) => !isTape(rig, part.id as PartId));
}
