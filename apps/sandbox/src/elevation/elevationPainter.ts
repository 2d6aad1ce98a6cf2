/** Paints the whole elevation at one moment. */
import type { Palette, Theme } from "../design/palette.ts";
import { largestTension } from "../scene/largestTension.ts";
import { type LiveFrame, sampleFrame } from "../scene/liveFrame.ts";
import { coveredBoxes } from "../scene/notes/coveredBoxes.ts";
import type { Projector } from "../scene/notes/noteInk.ts";
import type { NoteOptions } from "../scene/notes/notes.ts";
import { createNotesPainter } from "../scene/notes/notesPainter.ts";
import { anchorShape } from "../scene/shape/anchorShape.ts";
import { cuffsOf } from "../scene/shape/cuffs.ts";
import { createFineLine, type FineLine, fillFineLine } from "../scene/shape/fineLine.ts";
import { scaleEnd, tensionTable } from "../scene/shape/tensionColour.ts";
import { hasMoved, type Stage } from "../scene/stage.ts";
import { STONE } from "../scene/stone.ts";
import { drawFigure, drawFigureGhost } from "./drawFigure.ts";
import { drawAnchor, drawCuff, drawLeash, drawLine, type FlatPen } from "./drawRig.ts";
import { drawRock } from "./drawRock.ts";
import { type FlatView, fitFlat } from "./flatView.ts";

export interface ElevationPainter {
  readonly view: FlatView;
  /** Takes the canvas' present size and frames the rig in it. */
  readonly resize: () => void;
  readonly paint: (time: number) => void;
  readonly dispose: () => void;
}

interface Surroundings {
  readonly stage: Stage;
  readonly canvas: HTMLCanvasElement;
  readonly notesHost: HTMLElement;
  readonly palette: Palette;
  readonly theme: Theme;
  readonly wholeRig: boolean;
  readonly options: NoteOptions;
}

export function createElevationPainter(s: Surroundings): ElevationPainter {
  const { stage, canvas, palette, theme } = s;
  const { gap, recording, rig } = stage;
  const ink = canvas.getContext("2d")!;
  const notesPainter = createNotesPainter(s.notesHost, palette);
  const view: FlatView = { x: 0, z: 0, scale: 10 };
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
  let width = 1;
  let height = 1;
  const px = (x: number) => width / 2 + (x - view.x) * view.scale;
  const py = (z: number) => height / 2 - (z - view.z) * view.scale;
  const pen: FlatPen = {
    ink,
    palette,
    px,
    py,
    table: tensionTable(theme),
    scaleEnd: scaleEnd(largestTension(recording)),
    get scale() {
      return view.scale;
    },
  };
  const project: Projector = (x, _y, z, out) => {
    out[0] = px(x);
    out[1] = py(z);
    out[2] = 1;
  };

  function resize(): void {
    width = Math.max(canvas.clientWidth, 1);
    height = Math.max(canvas.clientHeight, 1);
    fitFlat(view, recording, gap, s.wholeRig, width, height);
  }

  function paint(time: number): void {
    const density = Math.min(globalThis.devicePixelRatio || 1, 2);
    if (canvas.width !== Math.round(width * density) || canvas.height !== Math.round(height * density)) {
      canvas.width = Math.round(width * density);
      canvas.height = Math.round(height * density);
    }
    const { live, before, previous } = stage;
    sampleFrame(live, time);
    ink.setTransform(density, 0, 0, density, 0, 0);
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
    stage.notes.update(live, s.options);
    notesPainter.paint(stage.notes, project, width, height, coveredBoxes(s.notesHost));
  }

  resize();
  return { view, resize, paint, dispose: notesPainter.dispose };
}

/** Backup first: the main line lies over it. */
function linesOf(live: LiveFrame): readonly FineLine[] {
  const main = createFineLine(live, "main");
  return live.backupNodes > 1 ? [createFineLine(live, "backup"), main] : [main];
}
