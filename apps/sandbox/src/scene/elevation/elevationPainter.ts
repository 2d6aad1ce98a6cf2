/** Paints the elevation on the canvas of the page, with its words over it. */

import type { Ink } from "@secondline/figures";
import {
  coveredEdges,
  createElevationScene,
  drawWithWords,
  type ElevationDrawing,
  type FlatView,
  fitFlat,
  flatProjector,
  type Size,
} from "@secondline/figures/scene";
import { coveredBoxes } from "../notes/coveredBoxes.ts";
import { createNotesPainter } from "../notes/notesPainter.ts";

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
    const covered = coveredEdges(coveredBoxes(s.notesHost, { panelsAlone: true }), size.height);
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

  return {
    view,
    resize,
    paint,
    draw: (other, time) => drawWithWords(scene, s, other, view, size, time),
    size,
    dispose: notesPainter.dispose,
  };
}
