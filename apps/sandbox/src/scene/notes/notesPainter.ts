/** Paints the notes over a picture on the screen: ink on one canvas, words in one layer of elements that are made once. */

import {
  type Label,
  type LabelEdges,
  NoteLayout,
  type Notes,
  type NotesCanvas,
  noteColour,
  noteFont,
  type Projector,
  type SceneNote,
} from "@secondline/figures/scene";
import { lettering } from "../../design/lettering.ts";
import type { Palette } from "../../design/palette.ts";

export interface NotesPainter {
  readonly paint: (
    notes: Notes,
    project: Projector,
    width: number,
    height: number,
    obstacles: readonly LabelEdges[],
  ) => void;
  readonly dispose: () => void;
}

interface Word {
  readonly element: HTMLElement;
  text: string;
  key: string;
}
type MovingSheet = { -readonly [Key in keyof NotesCanvas]: NotesCanvas[Key] };

export function createNotesPainter(host: HTMLElement, palette: Palette): NotesPainter {
  const canvas = document.createElement("canvas");
  canvas.style.cssText = "position:absolute;inset:0;width:100%;height:100%";
  host.append(canvas);
  const ink = canvas.getContext("2d")!;
  const words: Word[] = [];
  const layout = new NoteLayout();
  const sheet: MovingSheet = {
    ink,
    palette,
    project: () => undefined,
    largest: 1,
    width: 1,
    height: 1,
    lettering: 1,
    covered: [],
  };

  function grow(count: number): void {
    while (words.length < count) {
      const element = document.createElement("span");
      element.style.cssText =
        "position:absolute;left:0;top:0;white-space:nowrap;padding:0 4px;border-radius:3px;visibility:hidden;will-change:transform;line-height:20px";
      host.append(element);
      words.push({ element, text: "", key: "" });
    }
  }

  function paint(
    notes: Notes,
    project: Projector,
    width: number,
    height: number,
    obstacles: readonly LabelEdges[],
  ): void {
    const density = Math.min(globalThis.devicePixelRatio || 1, 2);
    if (canvas.width !== Math.round(width * density) || canvas.height !== Math.round(height * density)) {
      canvas.width = Math.round(width * density);
      canvas.height = Math.round(height * density);
    }
    ink.setTransform(density, 0, 0, density, 0, 0);
    ink.clearRect(0, 0, width, height);
    sheet.project = project;
    sheet.largest = notes.largest;
    sheet.width = width;
    sheet.height = height;
    sheet.lettering = lettering();
    sheet.covered = obstacles;
    layout.lay(notes, sheet);
    grow(layout.labels.length);
    for (let i = 0; i < words.length; i++) write(words[i]!, layout.labels[i]!, notes.list[i], sheet);
  }

  return {
    paint,
    dispose() {
      canvas.remove();
      for (const { element } of words) element.remove();
      words.length = 0;
    },
  };
}

function write(word: Word, label: Label, note: SceneNote | undefined, sheet: NotesCanvas): void {
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
  const { palette } = sheet;
  const font = noteFont(note, sheet.width, sheet.lettering);
  const key = `${note.kind}${font}`;
  if (key !== word.key) {
    style.visibility = "inherit";
    style.font = font;
    style.lineHeight = `${label.height}px`;
    style.fontVariantNumeric = "tabular-nums";
    style.color = noteColour(note, palette);
    style.background = `color-mix(in srgb, ${palette.paper} 82%, transparent)`;
    word.key = key;
  }
  style.transform = `translate(${Math.round(label.left)}px, ${Math.round(label.top)}px)`;
}
