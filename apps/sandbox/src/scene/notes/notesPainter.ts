/** Paints the notes over a picture: ink on one canvas, words in one layer of elements that are made once. */
import type { Palette } from "../../design/palette.ts";
import { type Box, createLabel, LABEL_SIDES, type Label, layOutLabels } from "./labelLayout.ts";
import { drawNote, type Projector, type Sheet } from "./noteInk.ts";
import type { Note, Notes } from "./notes.ts";

export interface NotesPainter {
  readonly paint: (notes: Notes, project: Projector, width: number, height: number, obstacles: readonly Box[]) => void;
  readonly setPalette: (palette: Palette) => void;
  readonly dispose: () => void;
}

const SERIF = '"Source Serif 4", "Iowan Old Style", Georgia, serif';
const SANS = '"IBM Plex Sans", "Segoe UI", system-ui, sans-serif';

export function createNotesPainter(host: HTMLElement, first: Palette): NotesPainter {
  const canvas = document.createElement("canvas");
  canvas.style.cssText = "position:absolute;inset:0;width:100%;height:100%";
  host.append(canvas);
  const ink = canvas.getContext("2d")!;
  const words: { readonly element: HTMLElement; text: string; key: string }[] = [];
  const labels: Label[] = [];
  let order = new Uint16Array(0);
  const sheet: Sheet = {
    ink,
    palette: first,
    project: () => undefined,
    largest: 1,
    width: 1,
    height: 1,
    covered: [],
  };
  const walker = { head: emptyBox(), body: { ...emptyBox(), body: true } };
  const taken: Box[] = [];
  const widths = new Map<string, number>();

  function widthOf(text: string, small: boolean, serif: boolean): number {
    if (text === "") return 0;
    const font = fontOf(small, serif);
    const key = font + text;
    const known = widths.get(key);
    if (known !== undefined) return known;
    if (widths.size > 600) widths.clear();
    ink.font = font;
    const width = Math.ceil(ink.measureText(text).width) + 9;
    widths.set(key, width);
    return width;
  }

  function grow(count: number): void {
    while (labels.length < count) {
      const element = document.createElement("span");
      element.style.cssText =
        "position:absolute;left:0;top:0;white-space:nowrap;padding:0 4px;border-radius:3px;visibility:hidden;will-change:transform;line-height:20px";
      host.append(element);
      words.push({ element, text: "", key: "" });
      labels.push(createLabel());
    }
    if (order.length !== labels.length) order = Uint16Array.from(labels, (_, i) => i);
  }

  function paint(notes: Notes, project: Projector, width: number, height: number, obstacles: readonly Box[]): void {
    const density = Math.min(globalThis.devicePixelRatio || 1, 2);
    if (canvas.width !== Math.round(width * density) || canvas.height !== Math.round(height * density)) {
      canvas.width = Math.round(width * density);
      canvas.height = Math.round(height * density);
    }
    ink.setTransform(density, 0, 0, density, 0, 0);
    ink.clearRect(0, 0, width, height);
    grow(notes.list.length);
    sheet.project = project;
    sheet.largest = notes.largest;
    sheet.width = width;
    sheet.height = height;
    sheet.covered = obstacles;
    const small = width < 560;
    for (let i = 0; i < labels.length; i++) {
      const label = labels[i]!;
      const note = notes.list[i];
      // On a small picture the legend alone names the lines.
      const crowded = small && note?.kind === "name" && note.short === "";
      label.active = note?.active === true && !crowded && drawNote(sheet, note, label);
      if (!label.active || !note) continue;
      if (label.shown === -1) label.slot = firstSide(note, label.slot);
      label.width = widthOf(note.text, small, serifFor(note));
      label.shortWidth = widthOf(note.short, small, serifFor(note));
      label.height = 20;
      label.priority = note.priority;
      label.clings = note.clings;
      label.overBody = note.kind === "arrow";
    }
    keepClear(walker, notes.body, project);
    taken.length = 0;
    taken.push(walker.head, walker.body, ...obstacles);
    layOutLabels(labels, order, width, height, taken);
    for (let i = 0; i < labels.length; i++) write(words[i]!, labels[i]!, notes.list[i], small, sheet.palette);
  }

  return {
    paint,
    setPalette(next) {
      sheet.palette = next;
      for (const word of words) word.key = "";
    },
    dispose() {
      canvas.remove();
      for (const { element } of words) element.remove();
      words.length = 0;
      labels.length = 0;
    },
  };
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

/** Names of lines stand above or below them, everything else beside its point. */
function firstSide(note: Note, otherwise: number): number {
  if (note.kind !== "name") return otherwise;
  return note.text === "Backup" ? LABEL_SIDES.below : LABEL_SIDES.above;
}

/** Measured numbers are set in the serif, as on a plan; names in the sans. */
function serifFor(note: Note): boolean {
  return note.kind === "dimension" || note.kind === "arrow";
}

function fontOf(small: boolean, serif: boolean): string {
  return `${serif ? 500 : 500} ${small ? 13 : 15}px ${serif ? SERIF : SANS}`;
}

function write(
  word: { readonly element: HTMLElement; text: string; key: string },
  label: Label,
  note: Note | undefined,
  small: boolean,
  palette: Palette,
): void {
  const { style } = word.element;
  if (!note || label.shown === -1) {
    if (word.key !== "hidden") style.visibility = "hidden";
    word.key = "hidden";
    return;
  }
  const text = label.shown === 0 ? note.text : note.short;
  if (text !== word.text) {
    word.element.textContent = text;
    word.text = text;
  }
  const key = `${note.kind}${small}`;
  if (key !== word.key) {
    style.visibility = "inherit";
    style.font = fontOf(small, serifFor(note));
    style.lineHeight = "20px";
    style.fontVariantNumeric = "tabular-nums";
    style.color =
      note.kind === "break"
        ? palette.failsInk
        : note.kind === "pointer"
          ? palette.accent
          : note.kind === "name"
            ? palette.softInk
            : palette.ink;
    style.background = `color-mix(in srgb, ${palette.paper} 82%, transparent)`;
    word.key = key;
  }
  style.transform = `translate(${Math.round(label.left)}px, ${Math.round(label.top)}px)`;
}
