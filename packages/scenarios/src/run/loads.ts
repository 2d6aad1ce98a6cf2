/** Reads the largest load of every part from a recording, as a load cell would report it (CFC 60). */
import { cfc60, cfc60Peak, type Recording } from "@secondline/engine";
import type { AnchorSide, LineName, Rig } from "@secondline/rig";
import type { StrengthZone } from "@secondline/strength";
import { carriedBy } from "../singles/whenGone.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";
import { legShare } from "./anchorLegs.ts";
import { halfElement } from "./elements.ts";

/**
 * Loads of the parts that have one load each, by part id [N], and of either anchor as a whole, as "anchorA" and "anchorB";
 * the webbing is in `webbingLoads`.
 */
export function partLoads(rig: Rig, recording: Recording): ReadonlyMap<string, number> {
  const { peaks } = recording;
  const loads = new Map<string, number>();
  const leash = peaks.leash.cfc60;
  loads.set("harness", leash).set("leash", leash);
  rig.rings.forEach((_, i) => {
    loads.set(rig.rings.length === 1 ? "ring" : `ring.${i}`, leash);
  });
  loads.set("endA", peaks.mainA.cfc60).set("endB", peaks.mainB.cfc60);
  if (rig.backup) {
    loads.set("backup.endA", peaks.backupA.cfc60).set("backup.endB", peaks.backupB.cfc60);
    connectionLoads(rig.backup.connections, recording, loads);
  }
  anchorLoads("A", rig.anchorA, recording, loads);
  anchorLoads("B", rig.anchorB, recording, loads);
  return loads;
}

/** The engine lists connections first, then tapes; the rig has them mixed. */
function connectionLoads(
  parts: readonly { readonly kind: "connection" | "tape" }[],
  recording: Recording,
  loads: Map<string, number>,
): void {
  const next = { connection: 0, tape: parts.filter((part) => part.kind === "connection").length };
  parts.forEach((part, i) => {
    const run = recording.connections[next[part.kind]++];
    if (run) loads.set(`connection.${i}`, run.peak);
  });
}

/** A part of the hardware carries the lines that hang on it, every point its share of all; a leg that fails carries no more. */
function anchorLoads(end: "A" | "B", side: AnchorSide, recording: Recording, loads: Map<string, number>): void {
  const id = `anchor${end}`;
  const { peaks } = recording;
  const load = { both: together(recording, end), main: peaks[`main${end}`].cfc60, backup: peaks[`backup${end}`].cfc60 };
  loads.set(id, load.both);
  side.hardware.forEach((part, i) => {
    loads.set(`${id}.hardware.${i}`, load[carriedBy(part)]);
  });
  const failure = recording.problem.legFailure;
  const failed = failure?.anchor === end ? failure.leg : undefined;
  const share = legShare(side, failed);
  side.points.forEach((_, i) => {
    if (i !== failed) loads.set(`${id}.points.${i}`, load.both * share);
  });
}

/** Force of main line and backup on one anchor at the same time, filtered; sample by sample [N]. */
export const anchorSignal = (recording: Recording, end: "A" | "B"): Float64Array =>
  cfc60(bothLines(recording, end), recording.rate);

/** The largest force of both lines together on one anchor [N]. */
const together = (recording: Recording, end: "A" | "B"): number => cfc60Peak(bothLines(recording, end), recording.rate);

function bothLines({ signals }: Recording, end: "A" | "B"): Float64Array {
  const main = signals[`main${end}`];
  const backup = signals[`backup${end}`];
  const sum = new Float64Array(main.length);
  for (let i = 0; i < sum.length; i++) sum[i] = main[i]! + backup[i]!;
  return sum;
}

/** A place on a webbing where load and strength meet. */
export interface WebbingLoad {
  /** Natural length from A [m]. */
  readonly at: number;
  readonly load: number;
  readonly zone: StrengthZone;
}

/** Load of every element of a line against the weakest zone it touches. `length`: natural length of the line [m]. */
export function webbingLoads(
  peaks: Recording["elementPeaks"]["main"],
  zones: readonly StrengthZone[],
  length: number,
): readonly WebbingLoad[] {
  const list: WebbingLoad[] = [];
  for (let e = 0; e < peaks.at.length; e++) {
    const at = peaks.at[e]! * length;
    let weakest: StrengthZone | undefined;
    for (const zone of zones) {
      if (!reaches(peaks.at, e, length, zone)) continue;
      if (!weakest || zone.strength < weakest.strength) weakest = zone;
    }
    if (weakest) list.push({ at: inside(at, weakest), load: peaks.peak[e]!, zone: weakest });
  }
  return list;
}

/** Whether an element reaches into a zone; where its neighbours are of other lengths, the longer one counts. */
export function reaches(
  at: Float32Array,
  e: number,
  length: number,
  zone: { readonly from: number; readonly to: number },
): boolean {
  const [middle, half] = [at[e]! * length, halfElement(at, e) * length];
  return zone.from < middle + half && zone.to > middle - half;
}

/** The element's middle where the zone reaches it, else the zone's own middle. */
function inside(at: number, zone: StrengthZone): number {
  return at >= zone.from && at <= zone.to ? at : (zone.from + zone.to) / 2;
}

/** Lines whose webbing or ends carry more than they hold somewhere. */
export function overloadedLines(recording: Recording, strengths: RigStrengths): readonly LineName[] {
  const strengthOf = (id: string) =>
    strengths.parts.find((part) => part.id === id)?.strength ?? Number.POSITIVE_INFINITY;
  const over = (line: LineName, prefix: string, length: number): boolean => {
    const zones = strengths.parts.find((part) => part.id === line)?.zones;
    if (!zones) return false;
    if (recording.peaks[`${line}A`].cfc60 > strengthOf(`${prefix}endA`)) return true;
    if (recording.peaks[`${line}B`].cfc60 > strengthOf(`${prefix}endB`)) return true;
    return webbingLoads(recording.elementPeaks[line], zones, length).some(({ load, zone }) => load > zone.strength);
  };
  const lines: LineName[] = [];
  if (over("main", "", strengths.mainLength)) lines.push("main");
  if (over("backup", "backup.", strengths.backupLength)) lines.push("backup");
  return lines;
}
