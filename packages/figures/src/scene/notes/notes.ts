/**
 * Notes over the scene: dimensions as on a plan, force arrows, marks of parted places, names. The list is fixed for a run; the
 * moment only moves, fills and switches its entries.
 */

import type { Recording, RunEvent } from "@secondline/engine";
import { isPartId, type Rig } from "@secondline/rig";
import type { GaveWay } from "@secondline/scenarios";
import { quantity, englishWords as words } from "@secondline/words";
import { sayPage } from "@secondline/words/page/page";
import type { LiveFrame } from "../liveFrame.ts";
import { eventWords } from "../sceneWords.ts";
import { type Gap, groundAt } from "../shape/gap.ts";
import { set3 } from "../shape/vector.ts";
import { jointAt } from "../shape/walkerPose.ts";
import type { WeakPlace } from "../weakPlace.ts";
import { fillPath, type LinePath, newPath } from "./linePath.ts";
import { nodeNear, partPlace } from "./partPlace.ts";

export type NoteKind = "dimension" | "arrow" | "break" | "name" | "pointer";
export interface SceneNote {
  readonly kind: NoteKind;
  active: boolean;
  /** Ends of a dimension; origin and direction of an arrow; place of a mark or name, xyz each [m]. */
  readonly a: Float64Array;
  readonly b: Float64Array;
  /** Start of the witness lines of a dimension, along x [m]. */
  witness: number;
  /** Force of an arrow [N]. */
  force: number;
  /** Longest an arrow may be drawn, so that two arrows on one rope do not cross [m]. */
  limit: number;
  text: string;
  short: string;
  priority: number;
  clings: boolean;
  /** For a line's name: visible places of the line. */
  readonly path?: LinePath;
  /** A name that is looked for a place below its line before it is above it. */
  readonly isBelow?: boolean;
}

export interface NoteOptions {
  readonly showForces: boolean;
  readonly selectedPart?: string | undefined;
  /** The weak place of the run, named while no part is chosen. */
  readonly weak?: WeakPlace | undefined;
  /** Wide views also measure the sag. */
  readonly wide: boolean;
}

export interface Notes {
  readonly list: readonly SceneNote[];
  /** Largest force of the run, the scale of the arrows [N]. */
  readonly largest: number;
  /** Middle of the head, and the lower ankle, xyz each: labels keep off the walker [m]. */
  readonly body: Float64Array;
  /** Ring, anchor A, anchor B, xyz each: labels keep off them too [m]. */
  readonly fittings: Float64Array;
  /** The picture is of the event, not of the whole rig. */
  readonly isClose: boolean;
  readonly update: (live: LiveFrame, options: NoteOptions) => void;
}

/** Top of the head over the tie-in, standing or sitting in the harness [m]. */
const CROWN_HEIGHT = 0.82;
/** The ghost of the start is named once the walker is farther from it than this [m]. */
const AWAY_DISTANCE = 1.2;
const HEAD = jointAt("head");
const ANKLES = [jointAt("ankleL"), jointAt("ankleR")] as const;
const LEAST_DROP = 0.15;
const LEAST_FORCE = 30;
/** How long a parted tape stays marked, in the run's time [s]. */
const TAPE_SHOWN_TIME = 0.25;

export function createNotes(recording: Recording, rig: Rig, gap: Gap, gaveWay: readonly GaveWay[] = []): Notes {
  const start = walkerStart(recording);
  const beside = reachOfWalker(recording) + 1.25;
  const drop = note("dimension", 90);
  const clear = note("dimension", 60);
  const sag = note("dimension", 55);
  const arrows = ["mainA", "backupA", "mainB", "backupB", "leash", "walker"].map((_, i) => note("arrow", 80 - i));
  const happened = recording.events.filter((e) => eventWords(e, rig).full !== "");
  const marks = happened.map((event) => markOf(event, recording, eventWords(event, rig, gaveWay)));
  const names = [
    name(sayPage("notes.anchor"), "A", 40),
    name(sayPage("notes.anchorB"), "B", 40),
    { ...name(sayPage("notes.mainLine"), "", 30), path: newPath() },
    { ...name(sayPage("notes.backup"), "", 29), path: newPath(), isBelow: true },
    name(sayPage("notes.start"), "", 20),
  ];
  const pointer = note("pointer", 95);
  const body = new Float64Array(6);
  const fittings = Float64Array.of(0, 0, 0, 0, 0, 0, gap.span, 0, gap.rise);
  pointer.clings = true;

  let isClose = false;
  function update(live: LiveFrame, options: NoteOptions): void {
    isClose = !options.wide;
    measureDrop(drop, live, start, beside);
    measureClearance(clear, live, gap);
    measureSag(sag, recording, gap, options.wide && !drop.active);
    for (const arrow of arrows) arrow.active = false;
    if (options.showForces) fillArrows(arrows, live);
    for (let i = 0; i < marks.length; i++) marks[i]!.active = isMarked(happened[i]!, live.time);
    placeNames(names, live, gap, options);
    nameGhost(names[4]!, live, start);
    pointOut(pointer, live, rig, options);
    copyBody(live, body);
    for (let c = 0; c < 3; c++) fittings[c] = live.positions[live.ring + c]!;
  }
  return {
    list: [drop, clear, sag, ...arrows, ...marks, ...names, pointer],
    largest: largestForce(recording),
    body,
    fittings,
    get isClose() {
      return isClose;
    },
    update,
  };
}

/** The part that is chosen, else the weak place. */
function pointOut(pointer: SceneNote, live: LiveFrame, rig: Rig, { selectedPart, weak }: NoteOptions): void {
  const part = selectedPart ?? weak?.part;
  const isWeak = part === weak?.part;
  pointer.active = part !== undefined && partPlace(part, live, rig, pointer.a, isWeak ? weak?.share : undefined);
  if (!pointer.active) return;
  pointer.short = nameOf(rig, part!);
  pointer.text = isWeak ? weak!.text : pointer.short;
}

const nameOf = (rig: Rig, part: string): string => (isPartId(part) ? words.partName(rig, part) : part);

function note(kind: NoteKind, priority: number): SceneNote {
  const a = new Float64Array(3);
  const b = new Float64Array(3);
  return {
    kind,
    active: false,
    a,
    b,
    witness: 0,
    force: 0,
    limit: Number.POSITIVE_INFINITY,
    text: "",
    short: "",
    priority,
    clings: false,
  };
}

function name(text: string, short: string, priority: number): SceneNote {
  return { ...note("name", priority), text, short };
}

function markOf(event: RunEvent, recording: Recording, { full, short }: ReturnType<typeof eventWords>): SceneNote {
  const mark = note("break", event.part === "tape" ? 35 : event.kind === "slip" ? 70 : 100);
  mark.text = full;
  mark.short = short;
  mark.clings = event.part !== "tape";
  const { frames } = recording;
  const frame = Math.min(Math.round(event.time * frames.rate), frames.count - 1);
  const stride = (frames.mainNodes + frames.backupNodes + 2) * 3;
  const node =
    event.part === "ring" || event.part === "leash"
      ? frames.mainNodes + frames.backupNodes
      : nodeNear(recording, event.part, event.at ?? 0);
  for (let c = 0; c < 3; c++) mark.a[c] = event.position?.[c] ?? frames.positions[frame * stride + 3 * node + c]!;
  return mark;
}

/** Tapes are made to part, so they are marked only for a while. Everything else stays marked. */
function isMarked(event: RunEvent, time: number): boolean {
  if (time < event.time) return false;
  return event.part !== "tape" || time < event.time + TAPE_SHOWN_TIME;
}

function measureDrop(drop: SceneNote, live: LiveFrame, start: Float64Array, beside: number): void {
  // The outcome's own number, to the last digit.
  const fallen = live.recording.walker.start - live.lowest;
  drop.active = fallen > LEAST_DROP;
  if (!drop.active) return;
  set3(drop.a, 0, beside, start[1]!, start[2]!);
  set3(drop.b, 0, beside, start[1]!, live.lowest);
  drop.witness = start[0]!;
  drop.short = quantity.drop(fallen);
  drop.text = sayPage("notes.drop", { short: drop.short });
}

function measureClearance(clear: SceneNote, live: LiveFrame, gap: Gap): void {
  const x = live.positions[live.walker]!;
  const ground = groundAt(gap, x);
  const height = live.positions[live.walker + 2]! - ground;
  clear.active = gap.known && x > 0 && x < gap.span && height > 0.2;
  if (!clear.active) return;
  // From the feet's side down, a little before the walker, so that it does not cut through the body.
  set3(clear.a, 0, x - 0.9, 0, live.positions[live.walker + 2]!);
  set3(clear.b, 0, x - 0.9, 0, ground);
  clear.witness = x;
  clear.short = quantity.height(height);
  clear.text = sayPage("notes.aboveGround", { short: clear.short });
}

function measureSag(sag: SceneNote, recording: Recording, gap: Gap, active: boolean): void {
  const [x, y, z] = recording.standing.point;
  sag.active = active && recording.standing.sag > 0.1;
  set3(sag.a, 0, x + 2, y, (gap.rise * x) / gap.span);
  set3(sag.b, 0, x + 2, y, z);
  sag.witness = x;
  sag.short = quantity.drop(recording.standing.sag);
  sag.text = sayPage("notes.sag", { short: sag.short });
}

function fillArrows(arrows: readonly SceneNote[], live: LiveFrame): void {
  const { positions, mainNodes, backupNodes, forces } = live;
  lineArrow(arrows[0]!, positions, 0, 1, forces.mainA, "main");
  lineArrow(arrows[2]!, positions, mainNodes - 1, mainNodes - 2, forces.mainB, "main");
  if (backupNodes > 1) {
    lineArrow(arrows[1]!, positions, mainNodes, mainNodes + 1, forces.backupA, "backup");
    const last = mainNodes + backupNodes - 1;
    lineArrow(arrows[3]!, positions, last, last - 1, forces.backupB, "backup");
  }
  const ring = live.ring / 3;
  const rope = Math.hypot(
    positions[live.ring]! - positions[live.walker]!,
    positions[live.ring + 1]! - positions[live.walker + 1]!,
    positions[live.ring + 2]! - positions[live.walker + 2]!,
  );
  arrows[4]!.limit = 0.46 * rope;
  arrows[5]!.limit = 0.46 * rope;
  lineArrow(arrows[4]!, positions, ring, ring + 1, forces.leash, "ring");
  lineArrow(arrows[5]!, positions, ring + 1, ring, forces.leash, "harness");
}

function lineArrow(arrow: SceneNote, nodes: Float32Array, from: number, to: number, force: number, word: string): void {
  arrow.active = force > LEAST_FORCE;
  if (!arrow.active) return;
  for (let c = 0; c < 3; c++) {
    arrow.a[c] = nodes[3 * from + c]!;
    arrow.b[c] = nodes[3 * to + c]! - nodes[3 * from + c]!;
  }
  const length = Math.hypot(arrow.b[0]!, arrow.b[1]!, arrow.b[2]!) || 1;
  for (let c = 0; c < 3; c++) arrow.b[c] = arrow.b[c]! / length;
  arrow.force = force;
  arrow.short = quantity.load(force);
  arrow.text = `${word} ${arrow.short}`;
}

function placeNames(names: readonly SceneNote[], live: LiveFrame, gap: Gap, options: NoteOptions): void {
  set3(names[0]!.a, 0, 0, 0, 0.1);
  set3(names[1]!.a, 0, gap.span, 0, gap.rise + 0.1);
  names[0]!.active = true;
  names[1]!.active = true;
  nameLine(names[2]!, live, gap, "main", options);
  nameLine(names[3]!, live, gap, "backup", options);
}

function nameLine(note: SceneNote, live: LiveFrame, gap: Gap, line: "main" | "backup", options: NoteOptions): void {
  const path = note.path!;
  fillPath(path, live, gap, line);
  note.active = path.count > 0 && options.selectedPart !== line;
  if (note.active) for (let c = 0; c < 3; c++) note.a[c] = path.places[3 * path.best + c]!;
}

function nameGhost(ghost: SceneNote, live: LiveFrame, start: Float64Array): void {
  const dx = live.positions[live.walker]! - start[0]!;
  const dz = live.positions[live.walker + 2]! - start[2]!;
  ghost.active = dx * dx + dz * dz > AWAY_DISTANCE * AWAY_DISTANCE;
  set3(ghost.a, 0, start[0]!, start[1]!, start[2]! + CROWN_HEIGHT);
}

function copyBody(live: LiveFrame, body: Float64Array): void {
  const { joints } = live.pose;
  const ankle = joints[ANKLES[0] + 2]! < joints[ANKLES[1] + 2]! ? ANKLES[0] : ANKLES[1];
  for (let c = 0; c < 3; c++) {
    body[c] = joints[HEAD + c]!;
    body[3 + c] = joints[ankle + c]!;
  }
}

function walkerStart(recording: Recording): Float64Array {
  const at = (recording.frames.mainNodes + recording.frames.backupNodes + 1) * 3;
  return Float64Array.from(recording.frames.positions.subarray(at, at + 3));
}

/** Largest x of the walker over the run [m]. */
function reachOfWalker(recording: Recording): number {
  const { frames } = recording;
  const stride = (frames.mainNodes + frames.backupNodes + 2) * 3;
  let most = -Infinity;
  for (let i = 0; i < frames.count; i++) most = Math.max(most, frames.positions[(i + 1) * stride - 3]!);
  return most;
}

function largestForce(recording: Recording): number {
  const { leash, mainA, mainB, backupA, backupB } = recording.peaks;
  return Math.max(leash.cfc60, mainA.cfc60, mainB.cfc60, backupA.cfc60, backupB.cfc60, 1);
}
