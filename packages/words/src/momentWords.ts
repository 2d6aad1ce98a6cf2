/**
 * The moments of a run in a few words, and the run as a whole: on the time axis, in the scene, and for readers who see neither.
 */

import type { Rig } from "@secondline/rig";
import type { GaveWay, Recording } from "@secondline/scenarios";
import { type Language, type Say, sayIn } from "./language.ts";
import { listed } from "./lists.ts";
import { capital, lowered, partName } from "./partNames.ts";
import { whereText } from "./phrases.ts";
import { drop, length, load, seconds, speed } from "./quantity.ts";

export type Moment = Recording["events"][number];
/** Like moments that follow so closely that they are told as one, such as the tapes of a backup. */
export type Moments = readonly [Moment, ...Moment[]];

/** The breaks of the run by its outcome. The engine knows lines and points; the outcome knows which end or part it was. */
export interface BreaksTold {
  readonly rig: Rig;
  readonly gaveWay: readonly GaveWay[];
}

function toldPart(say: Say, [{ kind, time, at }, ...others]: Moments, told: BreaksTold | undefined) {
  if (!told || kind !== "break" || others.length > 0) return undefined;
  const found = told.gaveWay.find((one) => one.time === time && one.at === at);
  return found && lowered(partName(say, told.rig, found.part));
}

/** Name of the engine's part, or of several such parts. */
function partOf(say: Say, id: string, count: number): string {
  switch (id) {
    case "main":
    case "backup":
    case "leash":
    case "ring":
    case "connection":
    case "tape":
      return say(`moment.part.${id}`, { count });
    case "anchorA":
    case "anchorB":
      return say("moment.part.leg", { count, anchor: id.at(-1)! });
    case "weblockA":
    case "weblockB":
      return say("moment.part.weblock", { anchor: id.at(-1)! });
    default:
      // An unknown part is shown as it is written.
      return id;
  }
}

/** Parts of which a rig has several. Other parts can only give way in several places. */
const isCounted = (id: string): boolean => id === "connection" || id === "tape" || id.startsWith("anchor");

/** "main line fails", "2 tapes give way", "lowest point". `falling`: the run ended before there was a lowest point. */
export function momentLabel(say: Say, moments: Moments, falling = false, told?: BreaksTold): string {
  const [{ kind, part: id }] = moments;
  const count = moments.length;
  const part = toldPart(say, moments, told) ?? partOf(say, id, count);
  switch (kind) {
    case "cut":
      return say("moment.cut", { part, count: isCounted(id) ? count : 1 });
    case "break":
      return count > 1 && !isCounted(id)
        ? say("moment.breakPlaces", { part, count })
        : say("moment.break", { part, count });
    case "slip":
      return say("moment.slip", { part, count });
    case "ringOff":
      return id === "ring" ? say("moment.ringOff") : say("moment.ringOffOne", { part });
    case "lowest":
      return say(falling ? "moment.stillFalling" : "moment.lowest");
    case "leashTaut":
    case "ground":
    case "letGo":
      return say(`moment.${kind}`);
  }
}

/** The same with the load at which it happened, or the speed: "Leash gives way at 12.3 kN". */
export function momentText(say: Say, moments: Moments, falling = false, told?: BreaksTold): string {
  const what = capital(momentLabel(say, moments, falling, told));
  const value = valueText(moments);
  return value === undefined ? what : say(moments.length > 1 ? "moment.upTo" : "moment.at", { what, value });
}

function valueText(moments: Moments): string | undefined {
  const [{ kind }] = moments;
  if (kind !== "ground" && kind !== "break" && kind !== "slip") return undefined;
  const values = moments.flatMap(({ value }) => value ?? []);
  if (values.length === 0) return undefined;
  const most = Math.max(...values);
  return kind === "ground" ? speed(most) : load(most);
}

/** The same with the place at which a line fails: "Main line fails at anchor A". */
export function placedMoment(language: Language, rig: Rig, moment: Moment, gaveWay: readonly GaveWay[] = []): string {
  const say = sayIn(language);
  const what = momentText(say, [moment], false, { rig, gaveWay });
  // For an anchor, `at` is the number of a leg.
  if (moment.kind !== "cut" || moment.at === undefined || moment.part.startsWith("anchor")) return what;
  return say("moment.where", { what, where: whereText(language, moment.at, rig.span) });
}

/** A line that parts in many places is told once. */
const isFirstOfLine = ({ kind, part }: Moment, i: number, all: readonly Moment[]): boolean =>
  kind !== "break" ||
  (part !== "main" && part !== "backup") ||
  all.findIndex((one) => one.kind === kind && one.part === part) === i;

/** The events of lines, parts and walker in a run, in order. Tapes are made to part, so they are only counted. */
function toldEvents(
  language: Language,
  rig: Rig,
  { events }: Recording,
  gaveWay: readonly GaveWay[],
): readonly string[] {
  const say = sayIn(language);
  const tapes = events.filter(({ kind, part }) => kind === "break" && part === "tape");
  const others = events.filter(
    ({ kind, part }) => part !== "tape" && (kind === "cut" || kind === "break" || kind === "slip"),
  );
  const told = others.filter(isFirstOfLine).map((one) => placedMoment(language, rig, one, gaveWay));
  const [first, ...rest] = tapes;
  if (first) told.push(momentText(say, [first, ...rest]));
  if (events.some(({ kind }) => kind === "ground")) told.push(say("moment.meetsGround"));
  return told.map((text) => text.charAt(0).toLowerCase() + text.slice(1));
}

/** The run in words, for a reader who does not see it. */
export function runSentences(
  language: Language,
  rig: Rig,
  recording: Recording,
  gaveWay: readonly GaveWay[] = [],
): readonly string[] {
  const say = sayIn(language);
  const { standing, walker, peaks } = recording;
  const happened = toldEvents(language, rig, recording, gaveWay);
  return [
    say("run.line", { rig: rig.name, span: length(rig.span) }),
    say("run.sag", { sag: drop(standing.sag) }),
    say("run.drop", { drop: drop(walker.drop), time: seconds(walker.lowestTime) }),
    say("run.pull", { pull: load(peaks.leash.cfc60) }),
    happened.length > 0 ? say("run.happened", { list: listed(happened, "semicolon") }) : say("run.nothingParts"),
  ];
}
