/** Reads the facts of a run from its recording. */
import type { Recording, RunEvent } from "@secondline/engine";
import { highestGround, type PartId, type Rig } from "@secondline/rig";
import { endsLostWith } from "../events/givesWay.ts";
import { takenAway, type WhatIf } from "../events/registry.ts";
import type { GaveWay, GoodRun } from "../facts/runFacts.ts";
import { PLACE_SPREAD } from "../scatter/inputs.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";
import { catchOf } from "./catcher.ts";
import { partLoads } from "./loads.ts";
import { trace } from "./thinnedTrace.ts";

export interface ReadRunOptions {
  readonly trace?: boolean;
}

export function readRun(
  rig: Rig,
  whatIf: WhatIf,
  recording: Recording,
  strengths: RigStrengths,
  options: ReadRunOptions = {},
): GoodRun {
  const { peaks, walker } = recording;
  const ground = recording.events.find((event) => event.kind === "ground");
  const { tieIn } = rig.walker;
  const clearance = leastClearance(rig, recording, 0);
  const nearby = leastClearance(rig, recording, PLACE_SPREAD * rig.span);
  const all = partLoads(rig, recording);
  const anchors = { A: all.get("anchorA")!, B: all.get("anchorB")! };
  const loads = Object.fromEntries([...all].filter(([id]) => id !== "anchorA" && id !== "anchorB"));
  const lost = whatIf.kind === "givesWay" ? endsLostWith(rig, whatIf.part) : [];
  const planned = [...takenAway(whatIf), ...lost];
  return {
    ok: true,
    peaks: {
      leash: peaks.leash.cfc60,
      mainA: peaks.mainA.cfc60,
      mainB: peaks.mainB.cfc60,
      backupA: peaks.backupA.cfc60,
      backupB: peaks.backupB.cfc60,
    },
    loads,
    anchors,
    webbing: { main: copied(recording.elementPeaks.main), backup: copied(recording.elementPeaks.backup) },
    catchTime: peaks.leash.cfc60Time,
    drop: walker.drop,
    ...(clearance === undefined ? {} : { clearance, feetClearance: clearance - tieIn }),
    ...(nearby === undefined ? {} : { feetNearby: nearby - tieIn }),
    ...(ground?.value === undefined ? {} : { groundSpeed: ground.value }),
    ...catchOf(recording),
    ...slippedIn(recording),
    gaveWay: breaksOf(recording, rig, strengths).filter(({ part }) => !planned.includes(part)),
    ...(options.trace ? { trace: trace(recording) } : {}),
  };
}

/** Out of the recording's own buffers, which go with it. */
const copied = ({ at, peak }: Recording["elementPeaks"]["main"]) => ({ at: at.slice(), peak: peak.slice() });

function slippedIn({ events }: Recording): Pick<GoodRun, "slipped"> {
  const slipped = events.flatMap(({ kind, part }) =>
    kind === "slip" ? ([part === "weblockA" ? "A" : "B"] as const) : [],
  );
  return slipped.length > 0 ? { slipped } : {};
}

/** Everything that parted in a run but the tapes, in the order of time. */
export function breaksOf(recording: Recording, rig: Rig, strengths: RigStrengths): readonly GaveWay[] {
  return recording.events
    .filter((event) => event.kind === "break" && event.part !== "tape")
    .map((event) => ({
      part: brokenPart(event, rig, strengths),
      time: event.time,
      ...(event.at === undefined ? {} : { at: event.at }),
    }));
}

/** Least height of the tie-in above the highest ground within `aside` to either side [m]; undefined when no ground is known. */
function leastClearance(rig: Rig, recording: Recording, aside: number): number | undefined {
  if (rig.ground.length < 2) return undefined;
  const { count, mainNodes, backupNodes, positions } = recording.frames;
  const perFrame = 3 * (mainNodes + backupNodes + 2);
  const ground = (x: number) => highestGround(rig, x - aside, x + aside);
  let least = Number.POSITIVE_INFINITY;
  let lowestZ = Number.POSITIVE_INFINITY;
  let lowestX = 0;
  for (let f = 0; f < count; f++) {
    const at = f * perFrame + perFrame - 3;
    const [x, z] = [positions[at]!, positions[at + 2]!];
    least = Math.min(least, z - ground(x));
    if (z < lowestZ) [lowestZ, lowestX] = [z, x];
  }
  // Between two frames the walker may have been lower still.
  return Math.min(least, recording.walker.lowest - ground(lowestX));
}

/** The id of the part that gave way: an end's clamp or loop is told from the webbing beside it by where it parted. */
function brokenPart(event: RunEvent, rig: Rig, strengths: RigStrengths): PartId {
  const { part, at } = event;
  if (part === "main" || part === "backup") {
    const end = at === undefined ? undefined : nearEnd(at, strengths[`${part}Length`]);
    if (end === undefined || !endIsWeaker(part, end, strengths)) return part;
    return part === "main" ? `end${end}` : `backup.end${end}`;
  }
  if (part === "anchorA" || part === "anchorB") return `${part}.points.${at ?? 0}`;
  if (part === "ring") return rig.rings.length === 1 ? "ring" : "ring.0";
  if (part === "connection") return nearestConnection(rig, at ?? 0);
  return "leash";
}

/** Webbing that parts within this distance of an anchor may have parted in its clamp, loop or knot [m]. */
const END_REACH = 0.6;

function nearEnd(at: number, length: number): "A" | "B" | undefined {
  if (at * length < END_REACH) return "A";
  return (1 - at) * length < END_REACH ? "B" : undefined;
}

function endIsWeaker(part: "main" | "backup", end: "A" | "B", strengths: RigStrengths): boolean {
  const zones = strengths.parts.find((one) => one.id === part)!.zones!;
  const webbing = end === "A" ? zones[0]! : zones.at(-1)!;
  const id = `${part === "main" ? "" : "backup."}end${end}`;
  return strengths.parts.find((one) => one.id === id)!.strength < webbing.strength;
}

function nearestConnection(rig: Rig, at: number): PartId {
  const parts = rig.backup?.connections ?? [];
  let best = -1;
  parts.forEach((one, i) => {
    if (one.kind !== "connection") return;
    if (best < 0 || Math.abs(one.at - at) < Math.abs(parts[best]!.at - at)) best = i;
  });
  return `connection.${best}`;
}
