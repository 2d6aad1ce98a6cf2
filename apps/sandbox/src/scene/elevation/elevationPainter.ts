/** Paints the whole elevation at one moment: on a canvas, or with any other ink. */

import type { Ink } from "@secondline/figures";
import type { Palette, Theme } from "../../design/palette.ts";
import { largestTension } from "../largestTension.ts";
import { type LiveFrame, sampleFrame } from "../liveFrame.ts";
import { coveredBoxes } from "../notes/coveredBoxes.ts";
import type { Box } from "../notes/labelLayout.ts";
import type { Projector } from "../notes/noteInk.ts";
import { writeNotes } from "../notes/noteLayout.ts";
import type { NoteOptions } from "../notes/notes.ts";
import { createNotesPainter } from "../notes/notesPainter.ts";
import { anchorShape } from "../shape/anchorShape.ts";
import { cuffsOf } from "../shape/cuffs.ts";
import { createFineLine, type FineLine, fillFineLine } from "../shape/fineLine.ts";
import { scaleEnd, tensionTable } from "../shape/tensionColour.ts";
import { hasMoved, type Stage } from "../stage.ts";
import { STONE } from "../stone.ts";
import { drawFigure, drawFigureGhost } from "./drawFigure.ts";
import { drawAnchor, drawCuff, drawLeash, drawLine, type FlatPen } from "./drawRig.ts";
import { drawRock } from "./drawRock.ts";
import { type Covered, type FlatView, fitFlat } from "./flatView.ts";

/** What is drawn, and how it is to look. */
export interface ElevationDrawing {
  readonly stage: Stage;
  readonly palette: Palette;
  readonly theme: Theme;
  readonly wholeRig: boolean;
  /** All of the ground, however deep; default: a deep gap runs out of the picture below. */
  readonly wholeGround?: boolean;
  readonly options: NoteOptions;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

export interface ElevationPainter {
  readonly view: FlatView;
  /** Takes the canvas' present size and frames the rig in it. */
  readonly resize: () => void;
  readonly paint: (time: number) => void;
  /** The same at `time`, words and all, with another ink. */
  readonly draw: (ink: Ink, time: number) => void;
  readonly size: Size;
  readonly dispose: () => void;
}

interface Surroundings extends ElevationDrawing {
  readonly canvas: HTMLCanvasElement;
  readonly notesHost: HTMLElement;
}

export function createElevationPainter(s: Surroundings): ElevationPainter {
  const { stage, canvas } = s;
  const ink = canvas.getContext("2d")!;
  const notesPainter = createNotesPainter(s.notesHost, s.palette);
  const view: FlatView = { x: 0, z: 0, scale: 10 };
  const scene = createElevationScene(s);
  const size = { width: 1, height: 1 };
  const project = flatProjector(view, size);

  function resize(): void {
    size.width = Math.max(canvas.clientWidth, 1);
    size.height = Math.max(canvas.clientHeight, 1);
    const covered = coveredEdges(coveredBoxes(s.notesHost), size.height);
    const scope = s.wholeGround ? "ground" : s.wholeRig ? "rig" : "event";
    fitFlat(view, stage.recording, stage.gap, scope, size.width, size.height, covered);
  }

  function paint(time: number): void {
    const { width, height } = size;
    const density = Math.min(globalThis.devicePixelRatio || 1, 2);
    if (canvas.width !== Math.round(width * density) || canvas.height !== Math.round(height * density)) {
      canvas.width = Math.round(width * density);
      canvas.height = Math.round(height * density);
    }
    ink.setTransform(density, 0, 0, density, 0, 0);
    scene.draw(ink, view, width, height, time);
    notesPainter.paint(stage.notes, project, width, height, coveredBoxes(s.notesHost));
  }

  resize();
  return {
    view,
    resize,
    paint,
    draw: (other, time) => drawWithWords(scene, s, other, view, size, time),
    size,
    dispose: notesPainter.dispose,
  };
}

/** How far what lies over the picture reaches in from its upper and its lower edge. */
function coveredEdges(boxes: readonly Box[], height: number): Covered {
  let [top, bottom] = [0, 0];
  for (const box of boxes) {
    if (box.bottom < height / 2) top = Math.max(top, box.bottom);
    else bottom = Math.max(bottom, height - box.top);
  }
  return { top, bottom };
}

/** The elevation of the whole rig or of the event, framed for a picture that is not on the screen [px]. */
export function drawElevation(drawing: ElevationDrawing, ink: Ink, width: number, height: number, time: number): void {
  const view: FlatView = { x: 0, z: 0, scale: 10 };
  fitFlat(view, drawing.stage.recording, drawing.stage.gap, drawing.wholeRig ? "rig" : "event", width, height);
  drawWithWords(createElevationScene(drawing), drawing, ink, view, { width, height }, time);
}

function drawWithWords(
  scene: ElevationScene,
  { stage, palette }: ElevationDrawing,
  ink: Ink,
  view: FlatView,
  size: Size,
  time: number,
): void {
  const { width, height } = size;
  scene.draw(ink, view, width, height, time);
  const project = flatProjector(view, size);
  const { largest } = stage.notes;
  writeNotes(stage.notes, { ink, palette, project, largest, width, height, covered: [] });
}

function flatProjector(view: FlatView, size: Size): Projector {
  return (x, _y, z, out) => {
    out[0] = size.width / 2 + (x - view.x) * view.scale;
    out[1] = size.height / 2 - (z - view.z) * view.scale;
    out[2] = 1;
  };
}

interface ElevationScene {
  /** Everything but the words; leaves the stage and its notes at `time`. */
  readonly draw: (ink: Ink, view: FlatView, width: number, height: number, time: number) => void;
}

function createElevationScene({ stage, palette, theme, options }: ElevationDrawing): ElevationScene {
  const { gap, recording, rig } = stage;
  const anchors = (["A", "B"] as const).map((side) =>
    anchorShape(side, side === "A" ? rig.anchorA : rig.anchorB, recording.problem.anchors?.[side], gap),
  );
  const cuffs = cuffsOf(recording);
  const lines = {
    live: linesOf(stage.live),
    before: createFineLine(stage.before, "main"),
    previous: stage.previous ? linesOf(stage.previous) : [],
  };
  fillFineLine(lines.before, stage.before);
  const table = tensionTable(theme);
  const end = scaleEnd(largestTension(recording));

  function draw(ink: Ink, view: FlatView, width: number, height: number, time: number): void {
    const pen: FlatPen = {
      ink,
      palette,
      table,
      scaleEnd: end,
      px: (x) => width / 2 + (x - view.x) * view.scale,
      py: (z) => height / 2 - (z - view.z) * view.scale,
      scale: view.scale,
    };
    const { live, before, previous } = stage;
    sampleFrame(live, time);
    ink.fillStyle = palette.paper;
    ink.fillRect(0, 0, width, height);
    if (hasMoved(stage)) {
      drawLine(pen, lines.before, palette.ghost);
      drawFigureGhost(pen, before.pose);
    }
    if (previous) {
      sampleFrame(previous, Math.min(time, previous.recording.duration));
      for (const line of lines.previous) {
        fillFineLine(line, previous);
        drawLine(pen, line, palette.lineBackup);
      }
      drawFigureGhost(pen, previous.pose);
    }
    for (const line of lines.live) {
      fillFineLine(line, live);
      drawLine(pen, line);
    }
    // Lines know no ground: what would lie in the rock is hidden by it, as in the picture in space.
    drawRock(ink, gap, view, palette, STONE[theme], width, height);
    for (const anchor of anchors) drawAnchor(pen, anchor);
    for (const { node, tape, until } of cuffs) {
      if (time < until) drawCuff(pen, live.positions[3 * node]!, live.positions[3 * node + 2]!, tape);
    }
    drawLeash(pen, live);
    drawFigure(pen, live.pose, theme);
    stage.notes.update(live, options);
  }
  return { draw };
}

/** Backup first: the main line lies over it. */
function linesOf(live: LiveFrame): readonly FineLine[] {
  const main = createFineLine(live, "main");
  return live.backupNodes > 1 ? [createFineLine(live, "backup"), main] : [main];
}
