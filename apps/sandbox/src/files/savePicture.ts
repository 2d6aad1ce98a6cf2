/** Pictures as files. In a file of its own, so that its code comes only when it is asked for. */
import type { Picture } from "@secondline/figures";
import { createStage, drawElevation, drawLegend, largestTension, legendHeight } from "@secondline/figures/scene";
import { type PlotRequest, timePicture } from "@secondline/figures/time";
import { sayFiles } from "@secondline/words/page/files";
import { outcomeOf, type Recordings, type SandboxState } from "@secondline/workbench";
import { runWords, weakPlace } from "@secondline/workbench/pictures";
import { PALETTES, type Theme } from "../design/palette.ts";
import { downloadBlob, fileName } from "../device/download.ts";
import { pngOf, svgOf } from "../picture/encode.ts";
import type { SceneSnapshot } from "../scene/index.ts";
import { quantity } from "../words.ts";

// Not by the folder's index: what draws pictures must not come with the page.

/** `png2` has twice as many pixels each way as the screen shows. */
export type PictureKind = "png" | "png2" | "svg";

export interface PictureSource {
  readonly state: SandboxState;
  readonly recordings: Recordings;
  readonly theme: Theme;
  readonly date: Date;
}

/** The scene as it stands. */
export function scenePicture(snapshot: SceneSnapshot, { state, recordings, theme, date }: PictureSource): Picture {
  const { run, session } = state;
  const { current, previous } = recordings;
  if (!run.shown || !current) throw new Error(sayFiles("savePicture.noFall"));
  const palette = PALETTES[theme];
  const main = outcomeOf(state)?.parts.find(({ id }) => id === "main");
  const facts = {
    theme,
    palette,
    largest: largestTension(current),
    strengthKN: main && main.strength5 / 1000,
    hasBackup: current.frames.backupNodes > 1,
    hasPrevious: session.compare && previous !== undefined,
  };
  return {
    words: runWords(
      state,
      run.shown,
      sayFiles("savePicture.moment", { seconds: quantity.seconds(snapshot.time) }),
      date,
    ),
    palette,
    body: snapshot,
    legend: { height: legendHeight(snapshot.width), draw: (ink, width) => drawLegend(ink, facts, width) },
  };
}

const SIDE_VIEW = { width: 1200, height: 620 };

/** The whole rig from the side at a moment of the run [s], drawn anew. */
export function sideSnapshot(
  { state, recordings, theme }: PictureSource,
  time: number,
  size: { readonly width: number; readonly height: number } = SIDE_VIEW,
): SceneSnapshot {
  const { run, session, assessment } = state;
  const { current, previous } = recordings;
  if (!run.shown || !current) throw new Error(sayFiles("savePicture.noFall"));
  const { showForces, selectedPart } = session;
  const drawing = {
    stage: createStage(
      current,
      run.shown.assessed.rig,
      session.compare ? previous : undefined,
      run.shown.outcome.gaveWay,
    ),
    palette: PALETTES[theme],
    theme,
    wholeRig: true,
    options: { showForces, selectedPart, weak: weakPlace(outcomeOf(state), run.shown, assessment.key), wide: true },
  };
  return { ...size, time, draw: (ink) => drawElevation(drawing, ink, size.width, size.height, time) };
}

/** Forces or energy over the time in view. */
export function plotPicture(request: PlotRequest, { state, theme, date }: PictureSource): Picture {
  const { run } = state;
  if (!run.shown) throw new Error(sayFiles("savePicture.noRun"));
  const { from, to } = request.range;
  const what = request.forces
    ? sayFiles("savePicture.forcesOverTime", {
        reading:
          request.forces.reading === "raw"
            ? sayFiles("savePicture.everySampleComputed")
            : sayFiles("savePicture.loadCellReports"),
      })
    : sayFiles("savePicture.whereEnergyFall");
  const seen = sayFiles("savePicture.to", { what, from: quantity.seconds(from), to: quantity.seconds(to) });
  const palette = PALETTES[theme];
  return { words: runWords(state, run.shown, seen, date), palette, body: timePicture(request, palette) };
}

export async function savePicture(picture: Picture, kind: PictureKind, name: string): Promise<void> {
  if (kind === "svg") downloadBlob(new Blob([svgOf(picture)], { type: "image/svg+xml" }), fileName(name, "svg"));
  else downloadBlob(await pngOf(picture, kind === "png2" ? 2 : 1), fileName(name, "png"));
}
