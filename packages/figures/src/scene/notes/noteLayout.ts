/** Which notes are drawn and where their words stand: laid out once per picture, on the screen or for a file. */

import { SANS, SERIF } from "../../ink/ink.ts";
import type { Palette } from "../../palette.ts";
import { createLabel, LABEL_SIDES, type Label, type LabelEdges, layOutLabels, MOST_SPOTS } from "./labelLayout.ts";
import type { LinePath } from "./linePath.ts";
import { drawNote, type NotesCanvas, type Projector } from "./noteInk.ts";
import type { NoteKind, Notes, SceneNote } from "./notes.ts";

/** A picture narrower than this is small: smaller letters, and the legend alone names the lines [px]. */
const SMALL_WIDTH = 560;
/** Height of a label in letters of their usual size [px]. */
const LABEL_HEIGHT = 20;
/** Largest distance of a note from its point, if there is no room beside the point [px]. */
const FARTHEST_OFF: Readonly<Record<NoteKind, number>> = { arrow: 96, break: 96, dimension: 48, pointer: 48, name: 0 };
/** Radius of a ring [m], and the least and the largest radius that is kept free around ring and anchors [px]. */
const RING_RADIUS = 0.12;
const [LEAST_CLEAR, MOST_CLEAR] = [5, 10];
/** Two lines that are nearer to one another than this get no name there: nobody could tell which one is named [px]. */
const MEETING_DISTANCE = 9;
/** Least distance between two spots of one name [px]. */
const SPOTS_APART = 30;

export class NoteLayout {
  readonly labels: Label[] = [];
  private order = new Uint16Array(0);
  private readonly widths = new Map<string, number>();
  private readonly walker = { head: emptyBox(), body: emptyBox() };
  private readonly fittings = [emptyBox(), emptyBox(), emptyBox()];
  private readonly taken: LabelEdges[] = [];

  /** Draws the ink of every note that is seen and gives its words their place. */
  lay(notes: Notes, sheet: NotesCanvas): void {
    const { project, width, height, covered, lettering } = sheet;
    this.grow(notes.list.length);
    const small = width < SMALL_WIDTH;
    for (let i = 0; i < this.labels.length; i++) {
      const label = this.labels[i]!;
      const note = notes.list[i];
      // In a small picture of the whole the legend alone names the lines.
      const crowded = small && note?.kind === "name" && note.short === "" && !(note.path && notes.isClose);
      label.active = note?.active === true && !crowded && drawNote(sheet, note, label);
      if (!label.active || !note) continue;
      if (label.shown === -1) label.slot = firstSide(note, label.slot);
      label.width = this.widthOf(sheet, note, note.text);
      label.shortWidth = this.widthOf(sheet, note, note.short);
      label.height = LABEL_HEIGHT * lettering;
      label.priority = note.priority;
      label.clings = note.clings;
      // Events at the walker are told where the body leaves room.
      label.farthest = FARTHEST_OFF[note.kind];
      label.shortFirst = note.kind === "dimension";
      label.spotCount = 0;
      if (note.path) findSpots(label, note.path, otherPath(notes, note), sheet);
      if (note.path && label.spotCount === 0) label.active = false;
      // Many tapes part in one breath: every one is marked, one is named.
      if (note.kind === "break" && saidBefore(this.labels, notes, i)) label.active = false;
    }
    keepClear(this.walker, notes.body, project);
    this.taken.length = 0;
    keepFittingsClear(this.fittings, notes.fittings, project);
    this.taken.push(this.walker.head, this.walker.body, ...this.fittings, ...covered);
    layOutLabels(this.labels, this.order, width, height, this.taken);
  }

  private grow(count: number): void {
    while (this.labels.length < count) this.labels.push(createLabel());
    if (this.order.length !== this.labels.length) this.order = Uint16Array.from(this.labels, (_, i) => i);
  }

  private widthOf({ ink, width: room, lettering }: NotesCanvas, note: SceneNote, text: string): number {
    if (text === "") return 0;
    const font = noteFont(note, room, lettering);
    const key = font + text;
    const known = this.widths.get(key);
    if (known !== undefined) return known;
    if (this.widths.size > 600) this.widths.clear();
    ink.font = font;
    const width = Math.ceil(ink.measureText(text).width) + 9;
    this.widths.set(key, width);
    return width;
  }
}

const otherPath = ({ list }: Notes, note: SceneNote): LinePath | undefined =>
  list.find((one) => one.path !== undefined && one !== note && one.path.count > 0)?.path;

function saidBefore(labels: readonly Label[], notes: Notes, index: number): boolean {
  const { text } = notes.list[index]!;
  for (let i = 0; i < index; i++) if (labels[i]!.active && notes.list[i]!.text === text) return true;
  return false;
}

/** The words of all notes as letters in the picture, for a file; on the screen they are elements. */
export function writeNotes(notes: Notes, sheet: NotesCanvas): void {
  const layout = new NoteLayout();
  layout.lay(notes, sheet);
  const { ink, palette, width, lettering } = sheet;
  for (const [i, label] of layout.labels.entries()) {
    const note = notes.list[i];
    if (!note || label.shown === -1) continue;
    const wide = label.shown === 0 ? label.width : label.shortWidth;
    ink.globalAlpha = 0.82;
    ink.fillStyle = palette.paper;
    ink.fillRect(Math.round(label.left), Math.round(label.top), wide, LABEL_HEIGHT * lettering);
    ink.globalAlpha = 1;
    ink.fillStyle = noteColour(note, palette);
    ink.font = noteFont(note, width, lettering);
    const baseline = Math.round(label.top + 15 * lettering);
    ink.fillText(label.shown === 0 ? note.text : note.short, Math.round(label.left) + 4, baseline);
  }
}

/** Font and colour of the words of a note. */
export function noteColour(note: SceneNote, palette: Palette): string {
  if (note.kind === "break") return palette.failsInk;
  if (note.kind === "pointer") return palette.accent;
  return note.kind === "name" ? palette.softInk : palette.ink;
}

interface MovingBox {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

function emptyBox(): MovingBox {
  return { left: 0, top: 0, right: 0, bottom: 0 };
}

const head = new Float64Array(3);
const ankle = new Float64Array(3);
/** Height of the head over the length of the body, head to ankle [-]. */
const HEAD_SHARE = 0.09;

/** Boxes of the walker's head and of the whole walker in the picture. */
function keepClear(
  walker: { readonly head: MovingBox; readonly body: MovingBox },
  joints: Float64Array,
  project: Projector,
): void {
  project(joints[0]!, joints[1]!, joints[2]!, head);
  project(joints[3]!, joints[4]!, joints[5]!, ankle);
  const radius = HEAD_SHARE * Math.hypot(ankle[0]! - head[0]!, ankle[1]! - head[1]!) + 1;
  setBox(walker.head, head[0]! - radius, head[1]! - radius, head[0]! + radius, head[1]! + radius);
  setBox(
    walker.body,
    Math.min(head[0]!, ankle[0]!) - radius,
    Math.min(head[1]!, ankle[1]!) - radius,
    Math.max(head[0]!, ankle[0]!) + radius,
    Math.max(head[1]!, ankle[1]!) + radius,
  );
}

function setBox(box: MovingBox, left: number, top: number, right: number, bottom: number): void {
  box.left = left;
  box.top = top;
  box.right = right;
  box.bottom = bottom;
}

const place = new Float64Array(3);
const before = new Float64Array(3);
const after = new Float64Array(3);

/**
 * Places of a line in the picture at which its name has room to both sides, outwards from the best; it stands on the side away from
 * the other line, and not where the two meet.
 */
function findSpots(label: Label, path: LinePath, other: LinePath | undefined, picture: Picture): void {
  const { project, width, height } = picture;
  const half = label.width / 2 + 4;
  for (let k = 0; k < 2 * path.count && label.spotCount < MOST_SPOTS; k++) {
    const i = path.best + (k % 2 === 0 ? 1 : -1) * Math.ceil(k / 2);
    if (i < 0 || i >= path.count) continue;
    projectPlace(path, i, project, place);
    const [x, y] = [place[0]!, place[1]!];
    if (place[2] !== 1 || x < half || x > width - half || y < 4 || y > height - 4) continue;
    const between = other ? heightOf(other, x, project) - y : Number.NaN;
    if (isNear(label, x, y) || Math.abs(between) < MEETING_DISTANCE) continue;
    label.spots[2 * label.spotCount] = x;
    label.spots[2 * label.spotCount + 1] = y;
    label.spotSides[label.spotCount] = between < 0 ? LABEL_SIDES.below : LABEL_SIDES.above;
    label.spotCount += 1;
  }
}

interface Picture {
  readonly project: Projector;
  readonly width: number;
  readonly height: number;
}

const projectPlace = ({ places }: LinePath, i: number, project: Projector, out: Float64Array) =>
  project(places[3 * i]!, places[3 * i + 1]!, places[3 * i + 2]!, out);

/** Height at which a line crosses a vertical through the picture [px]; NaN if it does not. */
function heightOf(path: LinePath, x: number, project: Projector): number {
  for (let i = 1; i < path.count; i++) {
    projectPlace(path, i - 1, project, before);
    projectPlace(path, i, project, after);
    const [x0, x1] = [before[0]!, after[0]!];
    if (before[2] !== 1 || after[2] !== 1 || x0 === x1 || (x0 - x) * (x1 - x) > 0) continue;
    return before[1]! + ((x - x0) / (x1 - x0)) * (after[1]! - before[1]!);
  }
  return Number.NaN;
}

function isNear({ spots, spotCount }: Label, x: number, y: number): boolean {
  for (let i = 0; i < spotCount; i++)
    if (Math.hypot(spots[2 * i]! - x, spots[2 * i + 1]! - y) < SPOTS_APART) return true;
  return false;
}

/** Boxes of the ring and both anchors; a box behind the camera lies far out of the picture. */
function keepFittingsClear(boxes: readonly MovingBox[], places: Float64Array, project: Projector): void {
  for (let i = 0; i < boxes.length; i++) {
    project(places[3 * i]!, places[3 * i + 1]!, places[3 * i + 2]!, place);
    project(places[3 * i]!, places[3 * i + 1]!, places[3 * i + 2]! + RING_RADIUS, head);
    const size = Math.abs(head[1]! - place[1]!);
    // Room kept free around ring and anchors; a line's name stands no nearer to its anchor than that.
    const clear = i === 0 ? Math.min(Math.max(size, LEAST_CLEAR), MOST_CLEAR) : LEAST_CLEAR;
    setBox(boxes[i]!, place[0]! - clear, place[1]! - clear, place[0]! + clear, place[1]! + clear);
  }
}

/** Names of lines stand above or below them, everything else beside its point. */
function firstSide(note: SceneNote, otherwise: number): number {
  if (note.kind !== "name") return otherwise;
  return note.isBelow ? LABEL_SIDES.below : LABEL_SIDES.above;
}

/** Measured numbers are set in the serif, as on a plan; names in the sans. `width`: of the picture [px]; `lettering` as of a `NotesCanvas`. */
export function noteFont({ kind }: SceneNote, width: number, lettering: number): string {
  const isMeasured = kind === "dimension" || kind === "arrow";
  return `500 ${(width < SMALL_WIDTH ? 13 : 15) * lettering}px ${isMeasured ? SERIF : SANS}`;
}
