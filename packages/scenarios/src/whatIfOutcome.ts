/** From a recording to the key results of one what-if. */
import type { Recording, RunEvent } from "@secondline/engine";
import { groundHeight, type Rig } from "@secondline/rig";
import { fate } from "./fate.ts";
import type { WhatIf, WhatIfOutcome } from "./outcome.ts";
import type { RigStrengths } from "./rigStrengths.ts";
import { whatIfTitle } from "./whatIf.ts";

/** A what-if whose numbers cannot be trusted: it says why and shows none. */
export function failedOutcome(rig: Rig, whatIf: WhatIf, problem: string): WhatIfOutcome {
  return { whatIf, title: whatIfTitle(whatIf, rig.span), ok: false, problem, broke: [], caught: false };
}

export function whatIfOutcome(rig: Rig, whatIf: WhatIf, recording: Recording, strengths: RigStrengths): WhatIfOutcome {
  const { peaks, walker } = recording;
  const ground = recording.events.find((event) => event.kind === "ground");
  const clearance = leastClearance(rig, recording);
  return {
    whatIf,
    title: whatIfTitle(whatIf, rig.span),
    ok: true,
    peaks: {
      leash: peaks.leash.cfc60,
      mainA: peaks.mainA.cfc60,
      mainB: peaks.mainB.cfc60,
      backupA: peaks.backupA.cfc60,
      backupB: peaks.backupB.cfc60,
    },
    drop: walker.drop,
    ...(clearance === undefined ? {} : { clearance, feetClearance: clearance - rig.walker.tieIn }),
    ...(ground?.value === undefined ? {} : { groundSpeed: ground.value }),
    broke: recording.events
      .filter((event) => event.kind === "break")
      .map((event) => ({
        part: brokenPart(event, rig, strengths),
        time: event.time,
        ...(event.at === undefined ? {} : { at: event.at }),
      })),
    caught: fate(recording) === "caught",
  };
}

/** Least height of the tie-in above the ground [m]; undefined when no ground is known. */
function leastClearance(rig: Rig, recording: Recording): number | undefined {
  if (rig.ground.length < 2) return undefined;
  const { count, mainNodes, backupNodes, positions } = recording.frames;
  const perFrame = 3 * (mainNodes + backupNodes + 2);
  let least = Number.POSITIVE_INFINITY;
  let lowestZ = Number.POSITIVE_INFINITY;
  let lowestX = 0;
  for (let f = 0; f < count; f++) {
    const at = f * perFrame + perFrame - 3;
    const [x, z] = [positions[at]!, positions[at + 2]!];
    least = Math.min(least, z - groundHeight(rig, x));
    if (z < lowestZ) [lowestZ, lowestX] = [z, x];
  }
  // Between two frames the walker may have been lower still.
  return Math.min(least, recording.walker.lowest - groundHeight(rig, lowestX));
}

/** The id of the part that gave way: an end's clamp or loop is told from the webbing beside it by where it parted. */
function brokenPart(event: RunEvent, rig: Rig, strengths: RigStrengths): string {
  const { part, at } = event;
  if ((part === "main" || part === "backup") && at !== undefined) {
    const length = part === "main" ? strengths.mainLength : strengths.backupLength;
    const prefix = part === "main" ? "" : "backup.";
    const end = nearEnd(at, length);
    return end !== undefined && endIsWeaker(part, end, strengths) ? `${prefix}end${end}` : part;
  }
  if (part === "anchorA" || part === "anchorB") return at === undefined ? part : `${part}.points.${at}`;
  if (part === "ring") return rig.rings.length === 1 ? "ring" : "ring.0";
  if ((part === "connection" || part === "tape") && at !== undefined) return nearestConnection(rig, part, at);
  return part;
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

function nearestConnection(rig: Rig, kind: "connection" | "tape", at: number): string {
  const parts = rig.backup?.connections ?? [];
  let best = -1;
  parts.forEach((one, i) => {
    if (one.kind === kind && (best < 0 || Math.abs(one.at - at) < Math.abs(parts[best]!.at - at))) best = i;
  });
  return `connection.${best}`;
}
