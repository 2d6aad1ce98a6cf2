/** What a what-if came to, in a sentence or two. */
import { formatForce, formatLength, formatSpeed, formatTime, type Rig } from "@secondline/rig";
import type { WhatIfOutcome } from "@secondline/scenarios";

const PARTS: Readonly<Record<string, string>> = {
  main: "the main line",
  backup: "the backup",
  endA: "the main line's end at A",
  endB: "the main line's end at B",
  "backup.endA": "the backup's end at A",
  "backup.endB": "the backup's end at B",
  leash: "the leash",
};

/** A part that gave way, by the id that outcomes use, as a sentence has it. */
export function partWords(id: string, rig: Rig): string {
  if (id.startsWith("ring")) return "the ring";
  if (isTape(id, rig)) return "a tape";
  if (id.startsWith("connection")) return "a connection";
  if (id.startsWith("anchor")) return `a leg of anchor ${id.startsWith("anchorA") ? "A" : "B"}`;
  return PARTS[id] ?? id;
}

/** Tapes are there to part: no news. */
function isTape(id: string, rig: Rig): boolean {
  const index = /^connection\.(\d+)$/.exec(id)?.[1];
  return id === "tape" || (index !== undefined && rig.backup?.connections[Number(index)]?.kind === "tape");
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export function answerWords(outcome: WhatIfOutcome, rig: Rig): string {
  if (!outcome.ok) {
    return `This fall could not be computed reliably${because(outcome.problem)}. Do not use any number of it.`;
  }
  return [howItEnded(outcome), hardestPull(outcome), whatParted(outcome, rig), howClose(outcome)]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function howItEnded({ caught, drop, groundSpeed, whatIf }: WhatIfOutcome): string {
  const down = drop === undefined ? "" : ` ${formatLength(drop)} down`;
  if (groundSpeed !== undefined) return `You hit the ground at ${formatSpeed(groundSpeed)}.`;
  if (!caught) return "Nothing caught you.";
  return `The ${whatIf.kind === "mainFails" ? "backup" : "main line"} caught you${down}.`;
}

function hardestPull({ peaks }: WhatIfOutcome): string {
  return peaks === undefined ? "" : `Hardest pull on your harness: ${formatForce(peaks.leash)}.`;
}

const because = (problem: string | undefined) => (problem ? `: ${problem.replace(/\.$/, "")}` : "");

function whatParted({ broke }: WhatIfOutcome, rig: Rig): string {
  const parted = broke.filter(({ part }) => !isTape(part, rig));
  const first = parted[0];
  if (!first) return "";
  const names = new Set(parted.map(({ part }) => partWords(part, rig)));
  const [name, ...others] = [...names];
  const more = others.length === 0 ? "" : `, then ${others.join(", ")}`;
  return `${capital(name!)} parted ${formatTime(first.time)} in${more}.`;
}

function howClose({ feetClearance, groundSpeed }: WhatIfOutcome): string {
  if (feetClearance === undefined || groundSpeed !== undefined || feetClearance > 5) return "";
  if (feetClearance <= 0) return "Your feet reach the ground.";
  return `Only ${formatLength(feetClearance)} are left under your feet.`;
}
