/** Plots as drawings: one by itself, or several under one another on a sheet with its cautions. */
import { type Ink, SERIF } from "../ink/ink.ts";
import { createSvgInk } from "../ink/svgInk.ts";
import type { Palette } from "../palette.ts";
import { brokenLines, type PictureBody, type PictureWords, sheetSvg } from "../sheet.ts";
import { drawPlot, plotHeight } from "./drawPlot.ts";
import type { Plot } from "./plot.ts";

export type Measure = (text: string, font: string) => number;

/** A plot by itself as an SVG document, without title and notes: they stand beside it on a page, where `name` tells it from others. */
export function plotSvg(plot: Plot, width: number, palette: Palette, measure: Measure, name: string): string {
  const ink = createSvgInk(measure, name);
  const height = plotHeight(plot, width, ink);
  drawPlot(ink, plot, width, palette);
  return ink.document(width, Math.ceil(height), [plot.title, ...plot.notes].join(" "));
}

/** Width of the plots on a sheet [px]. */
const PLOT_WIDTH = 860;

/** A sheet of plots as an SVG document, with its title above, and cautions and foot below. */
export function plotsSvg(
  plots: readonly Plot[],
  words: Omit<PictureWords, "lines">,
  palette: Palette,
  measure: Measure,
): string {
  const body = plotsBody(plots, PLOT_WIDTH, palette, measure);
  return sheetSvg({ words: { ...words, lines: [] }, palette, body }, measure);
}

/** Room at either edge of the sheet [px]. */
const SHEET_EDGE = 20;
/** Room between two plots [px]. */
const PLOT_GAP = 34;
const HEADING_LETTERS = { font: `600 16px ${SERIF}`, line: 21 };
const NOTE_LETTERS = { font: `400 14px ${SERIF}`, line: 19 };

/** Plots under one another, each with its title above and its notes below; a note is said once on a sheet. */
export function plotsBody(plots: readonly Plot[], width: number, palette: Palette, measure: Measure): PictureBody {
  const inner = width - 2 * SHEET_EDGE;
  const ink = createSvgInk(measure);
  let y = SHEET_EDGE;
  const said = new Set<string>();
  const placed = plots.map((plot) => {
    const heading = brokenLines(plot.title, inner, (text) => measure(text, HEADING_LETTERS.font));
    const fresh = plot.notes.filter((note) => !said.has(note));
    for (const note of fresh) said.add(note);
    const notes = fresh.flatMap((note) => brokenLines(note, inner, (text) => measure(text, NOTE_LETTERS.font)));
    const top = y;
    y +=
      heading.length * HEADING_LETTERS.line +
      plotHeight(plot, inner, ink) +
      notes.length * NOTE_LETTERS.line +
      PLOT_GAP;
    return { plot, heading, notes, top };
  });
  return {
    width,
    height: Math.ceil(y),
    draw: (on) => {
      for (const one of placed) drawOne(on, one, inner, palette);
    },
  };
}

interface Placed {
  readonly plot: Plot;
  readonly heading: readonly string[];
  readonly notes: readonly string[];
  readonly top: number;
}

function drawOne(ink: Ink, { plot, heading, notes, top }: Placed, width: number, palette: Palette): void {
  const lines = (texts: readonly string[], { font, line }: typeof NOTE_LETTERS, from: number, colour: string) => {
    ink.font = font;
    ink.fillStyle = colour;
    ink.textAlign = "left";
    texts.forEach((text, i) => {
      ink.fillText(text, SHEET_EDGE, from + 15 + i * line);
    });
    return from + texts.length * line;
  };
  const below = lines(heading, HEADING_LETTERS, top, palette.ink);
  ink.save();
  ink.translate(SHEET_EDGE, below);
  drawPlot(ink, plot, width, palette);
  ink.restore();
  lines(notes, NOTE_LETTERS, below + plotHeight(plot, width, ink) + 2, palette.softInk);
}
