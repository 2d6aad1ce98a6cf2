/** The legend of the scene for a picture that is kept: the names of the lines, and the tension scale. */

import { sayScene } from "@secondline/words/page/scene";
import { type Ink, SANS } from "../ink/ink.ts";
import type { Palette, Theme } from "../palette.ts";
import { LEGEND_SAMPLE_LENGTH, type Legend, type LegendFacts, type LegendStroke, legendOf } from "./legend.ts";
import { TABLE_SIZE, tensionCss, tensionTable } from "./shape/tensionColour.ts";

interface InkFacts extends LegendFacts {
  readonly theme: Theme;
  readonly palette: Palette;
}

const BAR_SIZE = { width: 180, height: 9 };
const FONT = `400 13px ${SANS}`;
/** Narrower than this, the scale stands under the lines [px]. */
const ONE_ROW_WIDTH = 620;

export const legendHeight = (width: number): number => (width < ONE_ROW_WIDTH ? 62 : 36);

export function drawLegend(ink: Ink, facts: InkFacts, width: number): void {
  const { palette, theme } = facts;
  const legend = legendOf(facts);
  ink.font = FONT;
  ink.textAlign = "left";
  let x = 0;
  for (const { name, strokes } of legend.lines) {
    for (const stroke of strokes) line(ink, x, stroke, palette);
    ink.fillStyle = palette.ink;
    ink.fillText(name, x + LEGEND_SAMPLE_LENGTH + 8, 15);
    x += LEGEND_SAMPLE_LENGTH + 8 + ink.measureText(name).width + 22;
  }
  const under = width < ONE_ROW_WIDTH;
  scale(ink, legend, { theme, palette }, under ? [0, 28] : [x + 10, 2]);
}

function line(ink: Ink, x: number, { width, dash, isPrevious }: LegendStroke, palette: Palette): void {
  ink.strokeStyle = isPrevious ? palette.lineBackup : palette.softInk;
  ink.lineWidth = width;
  ink.setLineDash([...dash]);
  ink.beginPath();
  ink.moveTo(x, 10);
  ink.lineTo(x + LEGEND_SAMPLE_LENGTH, 10);
  ink.stroke();
  ink.setLineDash([]);
}

type Look = Pick<InkFacts, "theme" | "palette">;

/** The scale in kN, with the strength on it or, beyond its end, in words. */
function scale(
  ink: Ink,
  { marks: [, end], strength }: Legend,
  { theme, palette }: Look,
  [x, y]: readonly [number, number],
): void {
  const table = tensionTable(theme);
  const shade = ink.createLinearGradient(x, 0, x + BAR_SIZE.width, 0);
  for (let i = 0; i <= 8; i++)
    shade.addColorStop(i / 8, tensionCss(table, Math.round((i / 8) * (TABLE_SIZE - 1)) / (TABLE_SIZE - 1)));
  ink.fillStyle = shade;
  ink.fillRect(x, y + 3, BAR_SIZE.width, BAR_SIZE.height);
  ink.fillStyle = palette.ink;
  ink.fillText("0", x, y + 28);
  ink.textAlign = "right";
  ink.fillText(sayScene("legend.tensionKn", { words: end }), x + BAR_SIZE.width, y + 28);
  ink.textAlign = "left";
  if (!strength) return;
  const { share, text } = strength;
  const at = share === undefined ? x + BAR_SIZE.width + 10 : x + BAR_SIZE.width * share;
  ink.fillStyle = palette.fails;
  ink.fillRect(at - 1, y - 1, 2, BAR_SIZE.height + 8);
  ink.fillStyle = palette.failsInk;
  ink.fillText(text, x + BAR_SIZE.width + 18, y + 13);
}
