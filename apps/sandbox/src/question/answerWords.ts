/** What a what-if came to, in a sentence or two. */
import { formatForce, formatLength, formatSpeed, formatTime } from "@secondline/rig";
import type { WhatIfOutcome } from "@secondline/scenarios";

const PARTS: Readonly<Record<string, string>> = {
  main: "the main line",
  backup: "the backup",
  leash: "the leash",
  ring: "the ring",
  connection: "a connection",
  tape: "a tape",
  anchorA: "a leg of anchor A",
  anchorB: "a leg of anchor B",
};
export const partWords = (part: string) => PARTS[part] ?? part;
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export function answerWords(outcome: WhatIfOutcome): string {
  if (!outcome.ok) {
    return `This fall could not be computed reliably. ${outcome.problem ?? ""} Do not use any number of it.`.replace(
      "  ",
      " ",
    );
  }
  return [howItEnded(outcome), hardestPull(outcome), whatParted(outcome), howClose(outcome)]
    .filter((sentence) => sentence !== "")
    .join(" ");
}

function howItEnded({ caught, drop, groundSpeed, whatIf }: WhatIfOutcome): string {
  const down = drop === undefined ? "" : ` ${formatLength(drop)} down`;
  if (groundSpeed !== undefined) return `You hit the ground at ${formatSpeed(groundSpeed)}.`;
  if (!caught) return "Nothing caught you.";
  return `The ${whatIf.kind === "leashFall" ? "main line" : "backup"} caught you${down}.`;
}

function hardestPull({ peaks }: WhatIfOutcome): string {
  return peaks === undefined ? "" : `Hardest pull on your harness: ${formatForce(peaks.leash)}.`;
}

/** The cut itself is the question, not news; tapes are there to part. */
function whatParted({ broke }: WhatIfOutcome): string {
  const parted = broke.filter(({ part }) => part !== "tape");
  const first = parted[0];
  if (!first) return "";
  const others = new Set(parted.slice(1).map(({ part }) => partWords(part)));
  others.delete(partWords(first.part));
  const more = others.size === 0 ? "" : `, then ${[...others].join(", ")}`;
  return `${capital(partWords(first.part))} parted ${formatTime(first.time)} in${more}.`;
}

function howClose({ feetClearance, groundSpeed }: WhatIfOutcome): string {
  if (feetClearance === undefined || groundSpeed !== undefined || feetClearance > 5) return "";
  if (feetClearance <= 0) return "Your feet reach the ground.";
  return `Only ${formatLength(feetClearance)} are left under your feet.`;
}
