import type { Recording, RunEvent } from "@secondline/engine";
import { capitalised, inKilonewtons, inSeconds } from "./format.ts";

/** Like events that follow one another so closely that they are one happening: the tapes of a backup, say. */
export type Happening = readonly [RunEvent, ...RunEvent[]];

const PARTS: ReadonlyMap<string, string> = new Map([
  ["main", "main line"],
  ["backup", "backup"],
  ["leash", "leash"],
  ["ring", "ring"],
  ["connection", "connection"],
  ["tape", "tape"],
  ["anchorA", "leg at anchor A"],
  ["anchorB", "leg at anchor B"],
  ["weblockA", "weblock at A"],
  ["weblockB", "weblock at B"],
]);
/** Parts of which a rig has several. */
const PLURALS: ReadonlyMap<string, string> = new Map([
  ["connection", "connections"],
  ["tape", "tapes"],
  ["anchorA", "legs at anchor A"],
  ["anchorB", "legs at anchor B"],
]);

/** The words of a happening on the time axis; an unknown part is shown as it is written. */
export function happeningLabel(happening: Happening, recording: Recording): string {
  const [{ kind, part: id }] = happening;
  const count = happening.length;
  const part = PARTS.get(id) ?? id;
  const several = count > 1 ? PLURALS.get(id) : undefined;
  switch (kind) {
    case "cut":
      return several ? `${count} ${several} cut` : `${part} cut`;
    case "break":
      if (several) return `${count} ${several} part`;
      return count > 1 ? `${part} parts in ${count} places` : `${part} parts`;
    case "leashTaut":
      return "leash taut";
    case "ringOff":
      return id === "ring" ? "ring off the line" : `ring off the ${part}`;
    case "ground":
      return "ground";
    case "letGo":
      return "feet off";
    case "slip":
      return count > 1 ? `${part} slips, ${count} times` : `${part} slips`;
    case "lowest":
      return endsFalling(recording) ? "still falling" : "lowest point";
  }
}

/** The whole story of a happening: what, when, and at what load or speed. */
export function happeningSentence(happening: Happening, recording: Recording): string {
  const first = happening[0].time;
  const last = happening.at(-1)!.time;
  const digits = last - first < 0.01 ? 3 : 2;
  const when = happening.length > 1 ? `${inSeconds(first, digits)} to ${inSeconds(last, digits)}` : inSeconds(first);
  return `${capitalised(happeningLabel(happening, recording))}, ${when}${atValue(happening)}`;
}

function atValue(happening: Happening): string {
  const { kind } = happening[0];
  const values = happening.map(({ value }) => value).filter((value) => value !== undefined);
  if (values.length === 0) return "";
  const most = Math.max(...values);
  const upTo = values.length > 1 ? "up to" : "at";
  if (kind === "ground") return `, ${upTo} ${most.toFixed(1)}\u00a0m/s`;
  return kind === "break" || kind === "slip" ? `, ${upTo} ${inKilonewtons(most)}` : "";
}

/** Whether the run ended before the walker had reached a lowest point. */
export function endsFalling(recording: Recording): boolean {
  const oneStep = 0.005;
  return (
    recording.walker.lowestTime >= recording.duration - oneStep && !recording.events.some((e) => e.kind === "ground")
  );
}
