import type { Recording, RunEvent } from "@secondline/engine";
import { inKilonewtons, inSeconds } from "./format.ts";

/** A moment of the run worth going to. */
export interface Mark {
  readonly key: string;
  /** [s] */
  readonly time: number;
  /** Words on the time axis. */
  readonly label: string;
  /** The whole story, for tooltips and for those who listen. */
  readonly sentence: string;
  /** What yields first when there is no room: lower goes before higher. */
  readonly rank: number;
}

/** Marks of a run in the order of time. */
export function eventMarks(recording: Recording): readonly Mark[] {
  const marks = recording.events
    .filter((event) => event.time <= recording.duration)
    .map((event, index) => ({
      key: `${event.kind}-${event.part}-${index}`,
      time: event.time,
      label: eventLabel(event),
      sentence: eventSentence(event),
      rank: RANK[event.kind],
    }));
  return marks.sort((a, b) => a.time - b.time);
}

const RANK: Readonly<Record<RunEvent["kind"], number>> = {
  break: 7,
  ground: 7,
  cut: 6,
  lowest: 5,
  ringOff: 4,
  slip: 3,
  leashTaut: 2,
  letGo: 1,
};

const PARTS: Readonly<Record<string, string>> = {
  main: "main line",
  backup: "backup",
  leash: "leash",
  ring: "ring",
  connection: "connection",
  tape: "tape",
  anchorA: "anchor A",
  anchorB: "anchor B",
};

/** The part's name in words; an unknown one is shown as it is written. */
export function partName(part: string): string {
  return PARTS[part] ?? part;
}

function eventLabel(event: RunEvent): string {
  const part = partName(event.part);
  switch (event.kind) {
    case "cut":
      return `${part} cut`;
    case "break":
      return `${part} parts`;
    case "leashTaut":
      return "leash taut";
    case "ringOff":
      return event.part === "ring" ? "ring off the line" : `ring off the ${part}`;
    case "ground":
      return "ground";
    case "letGo":
      return "feet off";
    case "slip":
      return `${part} slips`;
    case "lowest":
      return "lowest point";
  }
}

function eventSentence(event: RunEvent): string {
  const label = eventLabel(event);
  const what = label.charAt(0).toUpperCase() + label.slice(1);
  return `${what}, ${inSeconds(event.time)}${detail(event)}`;
}

function detail(event: RunEvent): string {
  if (event.value === undefined) return "";
  if (event.kind === "ground") return `, at ${event.value.toFixed(1)}\u00a0m/s`;
  if (event.kind === "break" || event.kind === "slip") return `, at ${inKilonewtons(event.value)}`;
  return "";
}

/** Nearest mark before (−1) or after (1) `time`; null when there is none. */
export function neighbouringMark(marks: readonly Mark[], time: number, direction: -1 | 1): Mark | null {
  // A clock that was sent to a mark stands on it but for rounding: it must not be found again.
  const tolerance = 1e-6;
  if (direction > 0) return marks.find((mark) => mark.time > time + tolerance) ?? null;
  return marks.findLast((mark) => mark.time < time - tolerance) ?? null;
}

/** The stretch of the run in which the fall is caught: from shortly before it starts to shortly after the last peak. */
export function eventRange(recording: Recording): { readonly from: number; readonly to: number } {
  const starts = recording.events.filter((e) => e.kind === "cut" || e.kind === "letGo" || e.kind === "break");
  const start = starts.length > 0 ? Math.min(...starts.map((e) => e.time)) : 0;
  const lastEvent = Math.max(recording.walker.lowestTime, recording.peaks.leash.cfc60Time, start);
  const margin = Math.max((lastEvent - start) * 0.15, 0.1);
  return { from: Math.max(start - margin, 0), to: Math.min(lastEvent + 2 * margin, recording.duration) };
}
