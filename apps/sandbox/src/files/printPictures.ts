/** The pictures of a printed page: drawn anew as vectors in the colours of paper, at the page's size. */

import { createSvgInk, type PictureBody } from "@secondline/figures";
import { timePicture, wholeRun } from "@secondline/figures/time";
import { sayFiles } from "@secondline/words/page/files";
import { PALETTES } from "../design/palette.ts";
import { measure } from "../picture/encode.ts";
import { words } from "../words.ts";
import { type PictureSource, sideSnapshot } from "./savePicture.ts";

const SIDE_SIZE = { width: 860, height: 400 };
const PLOT_SIZE = { width: 860, height: 320 };

/** The rig from the side at `time` [s] and the forces of the run, each as an SVG document; none without a run. */
export function printPictures(source: Omit<PictureSource, "theme">, time: number): readonly string[] {
  const { current } = source.recordings;
  if (!current || !source.state.run.shown) return [];
  const { assessed, whatIf } = source.state.run.shown;
  const title = words.eventTitle(assessed.rig, whatIf);
  const side = sideSnapshot({ ...source, theme: "light" }, time, SIDE_SIZE);
  const plot = timePicture(wholeRun(current, time), PALETTES.light, PLOT_SIZE);
  return [
    svg(side, sayFiles("printPictures.side", { title })),
    svg(plot, sayFiles("printPictures.forcesOverTime", { title })),
  ];
}

function svg(body: PictureBody, title: string): string {
  const ink = createSvgInk(measure);
  body.draw(ink);
  return ink.document(body.width, body.height, title);
}
