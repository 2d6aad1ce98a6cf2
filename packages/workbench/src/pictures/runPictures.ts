/** Pictures of the run in sight: the scene as it stands, the rig from the side, forces or energy over time. */
import { PALETTES, type Picture, type PictureBody, type Theme } from "@secondline/figures";
import { createStage, drawElevation, drawLegend, largestTension, legendHeight } from "@secondline/figures/scene";
import { type PlotRequest, timePicture, wholeRun } from "@secondline/figures/time";
import { quantity, englishWords as words } from "@secondline/words";
import { sayFiles } from "@secondline/words/page/files";
import type { Recordings } from "../inHand/recordings.ts";
import type { SandboxState } from "../inHand/state.ts";
import { outcomeOf } from "../inHand/verdictOf.ts";
import { runWords } from "./pictureWords.ts";
import { weakPlace } from "./weakPlace.ts";

/** What is in sight, to be drawn once more for a file. */
export interface SceneSnapshot extends PictureBody {
  /** The moment that is drawn [s]. */
  readonly time: number;
}

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

const SIDE_SIZE = { width: 860, height: 400 };
const PLOT_SIZE = { width: 860, height: 320 };

/** For a printed page, in the colours of paper: the rig from the side at `time` [s] and the forces of the run; none without a run. */
export function printedPictures(
  source: Omit<PictureSource, "theme">,
  time: number,
): readonly { readonly body: PictureBody; readonly title: string }[] {
  const { current } = source.recordings;
  if (!current || !source.state.run.shown) return [];
  const { assessed, whatIf } = source.state.run.shown;
  const title = words.eventTitle(assessed.rig, whatIf);
  return [
    {
      body: sideSnapshot({ ...source, theme: "light" }, time, SIDE_SIZE),
      title: sayFiles("printPictures.side", { title }),
    },
    {
      body: timePicture(wholeRun(current, time), PALETTES.light, PLOT_SIZE),
      title: sayFiles("printPictures.forcesOverTime", { title }),
    },
  ];
}
