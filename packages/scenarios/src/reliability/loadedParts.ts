/** The parts whose loads and strengths are set against each other; of webbing, every stretch of another strength. */
import type { Recording } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { type ReliabilityPart, reliabilityPart, type StrengthZone } from "@secondline/strength";
import { partLoads } from "../loads.ts";
import type { RigStrengths } from "../rigStrengths.ts";

export interface LoadedPart {
  readonly part: ReliabilityPart;
  /** For a stretch of webbing. */
  readonly zone?: StrengthZone;
}

/** Every part but the tapes, which are made to part. */
export function loadedParts(rig: Rig, strengths: RigStrengths): readonly LoadedPart[] {
  const tapes = new Set((rig.backup?.connections ?? []).flatMap((one, i) => (one.kind === "tape" ? [i] : [])));
  return strengths.parts.flatMap((part): LoadedPart[] => {
    if (tapes.has(Number(part.id.replace("connection.", "")))) return [];
    if (!part.zones) return [{ part: reliabilityPart(part) }];
    return part.zones.map((zone, z) => {
      const { median, causes, own } = reliabilityPart({ ...part, factors: zone.factors, strength: zone.strength });
      const stretchOf = { id: part.id, name: part.name };
      const name = `${part.name}, ${zone.reason}`;
      return { part: { id: `${part.id}/${z}`, name, stretchOf, median, causes, own }, zone };
    });
  });
}

/** Load of each of `parts` in a run [N]. A part without a reading in the run carries nothing. */
export function loadsIn(
  parts: readonly LoadedPart[],
  rig: Rig,
  recording: Recording,
  strengths: RigStrengths,
): readonly number[] {
  const single = partLoads(rig, recording);
  return parts.map(({ part, zone }) => {
    if (!zone) return single.get(part.id) ?? 0;
    const line = part.stretchOf!.id === "backup" ? "backup" : "main";
    return zoneLoad(recording.elementPeaks[line], zone, strengths[`${line}Length`]);
  });
}

/** The largest load of the elements that reach into a stretch [N]. */
function zoneLoad({ at, peak }: Recording["elementPeaks"]["main"], zone: StrengthZone, length: number): number {
  let largest = 0;
  for (let e = 0; e < at.length; e++) {
    const from = e > 0 ? (at[e - 1]! + at[e]!) / 2 : 0;
    const to = e + 1 < at.length ? (at[e]! + at[e + 1]!) / 2 : 1;
    if (zone.from < to * length && zone.to > from * length) largest = Math.max(largest, peak[e]!);
  }
  return largest;
}

/** Of the stretches of one line so many are kept, those that ever come nearest to failing. */
const MOST_STRETCHES = 4;

/** Indices of the parts to go on with: all but the stretches that others of their line are always weaker than. */
export function worthKeeping(parts: readonly LoadedPart[], loads: readonly (readonly number[])[]): readonly number[] {
  const least = parts.map(({ part }, i) => Math.min(...loads.map((row) => part.median / row[i]!)));
  return parts.flatMap((one, i) => {
    const line = one.part.stretchOf?.id;
    if (line === undefined) return [i];
    const weaker = parts.filter((other, j) => other.part.stretchOf?.id === line && less(least, j, i));
    return weaker.length < MOST_STRETCHES ? [i] : [];
  });
}

const less = (values: readonly number[], a: number, b: number) =>
  values[a]! < values[b]! || (values[a] === values[b] && a < b);
