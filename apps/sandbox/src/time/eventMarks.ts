import type { Recording, RunEvent } from "@secondline/engine";
import { capitalised, inKilonewtons, inSeconds } from "./format.ts";

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
      label: eventLabel(event, recording),
      sentence: eventSentence(event, recording),
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
  anchorA: "leg at anchor A",
  anchorB: "leg at anchor B",
  weblockA: "weblock at A",
  weblockB: "weblock at B",
};

/** The part's name in words; an unknown one is shown as it is written. */
export function partName(part: string): string {
  return PARTS[part] ?? part;
}

function eventLabel(event: RunEvent, recording: Recording): string {
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
      return endsFalling(recording) ? "still falling" : "lowest point";
  }
}

function eventSentence(event: RunEvent, recording: Recording): string {
  const label = eventLabel(event, recording);
  return `${capitalised(label)}, ${inSeconds(event.time)}${detail(event)}`;
}

function detail(event: RunEvent): string {
  if (event.value === undefined) return "";
  if (event.kind === "ground") return `, at ${event.value.toFixed(1)}\u00a0m/s`;
  if (event.kind === "break" || event.kind === "slip") return `, at ${inKilonewtons(event.value)}`;
  return "";
}

/** Whether the run ended before the walker had reached a lowest point. */
export function endsFalling(recording: Recording): boolean {
  const oneStep = 0.005;
  return (
    recording.walker.lowestTime >= recording.duration - oneStep && !recording.events.some((e) => e.kind === "ground")
  );
}

/** Nearest mark before (−1) or after (1) `time`; null when there is none. */
export function neighbouringMark(marks: readonly Mark[], time: number, direction: -1 | 1): Mark | null {
  // A clock that was sent to a mark stands on it but for rounding: it must not be found again.
  const tolerance = 1e-6;
  if (direction > 0) return marks.find((mark) => mark.time > time + tolerance) ?? null;
  return marks.findLast((mark) => mark.time < time - tolerance) ?? null;
}

/** The stretch in which the fall starts and is caught: what is repeated when somebody asks for the event. */
export function eventRange(recording: Recording): { readonly from: number; readonly to: number } {
  const timesOf = (...kinds: readonly RunEvent["kind"][]) =>
    recording.events.filter(({ kind }) => kinds.includes(kind)).map(({ time }) => time);
  const start = Math.min(...timesOf("cut", "letGo", "break"), recording.duration);
  const caught = recording.peaks.leash.cfc60Time;
  // A lowest point long after the leash's peak belongs to a later swing.
  const lowest = Math.min(recording.walker.lowestTime, caught + 1);
  const end = Math.max(caught, lowest, ...timesOf("break", "ground"));
  const from = Math.min(start, end);
  const margin = Math.max((end - from) * 0.15, 0.1);
  return { from: Math.max(from - margin, 0), to: Math.min(end + 2 * margin, recording.duration) };
}
