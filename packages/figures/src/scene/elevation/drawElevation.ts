/** Draws the whole elevation at one moment with any ink. */

import type { Ink } from "../../ink/ink.ts";
import type { Palette, Theme } from "../../palette.ts";
import { largestTension } from "../largestTension.ts";
import { type LiveFrame, sampleFrame } from "../liveFrame.ts";
import type { Projector } from "../notes/noteInk.ts";
import { writeNotes } from "../notes/noteLayout.ts";
import type { NoteOptions } from "../notes/notes.ts";
import { anchorShape } from "../shape/anchorShape.ts";
import { cuffsOf } from "../shape/cuffs.ts";
import { createFineLine, type FineLine, fillFineLine } from "../shape/fineLine.ts";
import { scaleEnd, tensionTable } from "../shape/tensionColour.ts";
import { hasMoved, type Stage } from "../stage.ts";
import { STONE } from "../stone.ts";
import { drawFigure, drawFigureGhost } from "./drawFigure.ts";
import { drawAnchor, drawCuff, drawLeash, drawLine, type FlatPen } from "./drawRig.ts";
import { drawRock } from "./drawRock.ts";
import { type FlatView, fitFlat } from "./flatView.ts";

/** The scene to draw, and its looks. */
export interface ElevationDrawing {
  readonly stage: Stage;
  readonly palette: Palette;
  readonly theme: Theme;
  readonly wholeRig: boolean;
  /** Shows all of the ground, however deep; default: a deep gap runs out of the picture below. */
  readonly wholeGround?: boolean;
  readonly options: NoteOptions;
}

/** Size of the picture [px]. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The elevation of the whole rig or of the event, framed for a picture that is not on the screen [px]. */
export function drawElevation(drawing: ElevationDrawing, ink: Ink, width: number, height: number, time: number): void {
  const view: FlatView = { x: 0, z: 0, scale: 10 };
  fitFlat(view, drawing.stage.recording, drawing.stage.gap, drawing.wholeRig ? "rig" : "event", width, height);
  drawWithWords(createElevationScene(drawing), drawing, ink, view, { width, height }, time);
}

/** Draws everything, words included. */
export function drawWithWords(
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
  writeNotes(stage.notes, { ink, palette, project, largest, width, height, lettering: 1, covered: [] });
}

export function flatProjector(view: FlatView, size: Size): Projector {
  return (x, _y, z, out) => {
    out[0] = size.width / 2 + (x - view.x) * view.scale;
    out[1] = size.height / 2 - (z - view.z) * view.scale;
    out[2] = 1;
  };
}

export interface ElevationScene {
  /** Draws everything but the words; leaves the stage and its notes at `time`. */
  readonly draw: (ink: Ink, view: FlatView, width: number, height: number, time: number) => void;
}

export function createElevationScene({ stage, palette, theme, options }: ElevationDrawing): ElevationScene {
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
    // Computed lines ignore the ground. The rock hides pieces of line that lie in it, as in the picture in space.
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
