/** The parts whose loads and strengths are set against each other; of webbing, every stretch of another strength. */
import { isTape, type PartId, type Rig } from "@secondline/rig";
import { type ReliabilityPart, reliabilityPart, type StrengthZone } from "@secondline/strength";
import type { GoodRun, PeaksAlongLine } from "../facts/runFacts.ts";
import { reaches } from "../run/loads.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";

export interface LoadedPart {
  readonly part: ReliabilityPart;
  /** Where it lies, for a stretch of webbing. */
  readonly zone?: StrengthZone;
}

/** Every part but the tapes, which are made to part. */
export function loadedParts(rig: Rig, strengths: RigStrengths): readonly LoadedPart[] {
  return strengths.parts.flatMap((part): LoadedPart[] => {
    if (isTape(rig, part.id as PartId)) return [];
    if (!part.zones) return [{ part: reliabilityPart(part) }];
    return part.zones.map((zone, z) => {
      const { median, causes, own } = reliabilityPart({ ...part, factors: zone.factors, strength: zone.strength });
      const stretchOf = { id: part.id, name: part.name };
      const name = `${part.name}, ${zone.reason}`;
      return { part: { id: `${part.id}/${z}`, name, stretchOf, median, causes, own }, zone };
    });
  });
}

/** Load of each of `parts` in a run [N]. What the event takes away carries nothing; every other part has a reading. */
export function loadsIn(
  parts: readonly LoadedPart[],
  run: GoodRun,
  strengths: RigStrengths,
  absent: readonly PartId[] = [],
): readonly number[] {
  return parts.map(({ part, zone }) => {
    if (!zone) {
      const load = absent.includes(part.id as PartId) ? 0 : run.loads[part.id as PartId];
      // Taken for nothing, it would be a part that never fails.
      if (load === undefined) throw new Error(`the run has no load for ${part.name} (${part.id})`);
      return load;
    }
    const line = part.stretchOf!.id === "backup" ? "backup" : "main";
    return zoneLoad(run.webbing[line], zone, strengths[`${line}Length`]);
  });
}

/** The largest load of the elements that reach into a stretch [N]. */
function zoneLoad({ at, peak }: PeaksAlongLine, zone: StrengthZone, length: number): number {
  let largest = 0;
  for (let e = 0; e < at.length; e++) {
    if (reaches(at, e, length, zone)) largest = Math.max(largest, peak[e]!);
  }
  return largest;
}

/** So many stretches of one line are kept: those that ever come nearest to failing. */
const MOST_STRETCHES = 4;
/** A stretch that scatters much may fail first though its median is not the least. So stretches are ranked this far below the median [standard deviations]. */
const DEVIATIONS_BELOW_MEDIAN = 3;

const lowStrength = ({ median, own, causes }: ReliabilityPart) =>
  median * Math.exp(-DEVIATIONS_BELOW_MEDIAN * Math.hypot(own, ...Object.values(causes)));

/** Indices of the parts to keep. Left out are stretches that never come as near to failing as other stretches of their line. */
export function worthKeeping(parts: readonly LoadedPart[], loads: readonly (readonly number[])[]): readonly number[] {
  const least = parts.map(({ part }, i) => Math.min(...loads.map((row) => lowStrength(part) / row[i]!)));
  return parts.flatMap((one, i) => {
    const line = one.part.stretchOf?.id;
    if (line === undefined) return [i];
    const weaker = parts.filter((other, j) => other.part.stretchOf?.id === line && less(least, j, i));
    return weaker.length < MOST_STRETCHES ? [i] : [];
  });
}

const less = (values: readonly number[], a: number, b: number) =>
  values[a]! < values[b]! || (values[a] === values[b] && a < b);

/** How many stretches of a line are kept. */
export interface KeptStretches {
  readonly line: "main" | "backup";
  readonly kept: number;
  readonly of: number;
}

/** The lines of which stretches were dropped. */
export function droppedStretches(parts: readonly LoadedPart[], kept: readonly number[]): readonly KeptStretches[] {
  return (["main", "backup"] as const).flatMap((line): KeptStretches[] => {
    const mine = parts.flatMap(({ part }, i) => (part.stretchOf?.id === line ? [i] : []));
    const left = mine.filter((i) => kept.includes(i)).length;
    return left < mine.length ? [{ line, kept: left, of: mine.length }] : [];
  });
}
