/** The legend of the scene for a picture that is kept: the names of the lines, and the tension scale. */

import { quantity } from "@secondline/words";
import { sayScene } from "@secondline/words/page/scene";
import { type Ink, SANS } from "../ink/ink.ts";
import type { Palette, Theme } from "../palette.ts";
import { scaleEnd, TABLE_SIZE, tensionCss, tensionTable } from "./shape/tensionColour.ts";

export interface LegendFacts {
  readonly theme: Theme;
  readonly palette: Palette;
  /** Largest tension of the run [N]. */
  readonly largest: number;
  /** [kN] */
  readonly strengthKN?: number | undefined;
  readonly hasBackup: boolean;
  readonly hasPrevious: boolean;
}

const BAR_SIZE = { width: 180, height: 9 };
const FONT = `400 13px ${SANS}`;
/** Narrower than this, the scale stands under the lines [px]. */
const ONE_ROW_WIDTH = 620;

export const legendHeight = (width: number): number => (width < ONE_ROW_WIDTH ? 62 : 36);

export function drawLegend(ink: Ink, facts: LegendFacts, width: number): void {
  const { palette, hasBackup, hasPrevious } = facts;
  ink.font = FONT;
  ink.textAlign = "left";
  let x = 0;
  const named = (name: string, draw: (x: number) => void): void => {
    draw(x);
    ink.fillStyle = palette.ink;
    ink.fillText(name, x + 42, 15);
    x += 42 + ink.measureText(name).width + 22;
  };
  named(sayScene("legendInk.mainLine"), (at) => line(ink, at, palette.softInk, 4, []));
  if (hasBackup) {
    named("backup", (at) => {
      line(ink, at, palette.softInk, 1, []);
      line(ink, at, palette.softInk, 4, [8, 5]);
    });
  }
  if (hasPrevious) named(sayScene("legendInk.runBefore"), (at) => line(ink, at, palette.lineBackup, 1.4, []));
  const under = width < ONE_ROW_WIDTH;
  scale(ink, facts, under ? 0 : x + 10, under ? 28 : 2);
}

function line(ink: Ink, x: number, colour: string, width: number, dash: readonly number[]): void {
  ink.strokeStyle = colour;
  ink.lineWidth = width;
  ink.setLineDash([...dash]);
  ink.beginPath();
  ink.moveTo(x, 10);
  ink.lineTo(x + 34, 10);
  ink.stroke();
  ink.setLineDash([]);
}

/** The scale in kN, with the strength on it or, beyond its end, in words. */
function scale(ink: Ink, { theme, palette, largest, strengthKN }: LegendFacts, x: number, y: number): void {
  const table = tensionTable(theme);
  const end = scaleEnd(largest) / 1000;
  const shade = ink.createLinearGradient(x, 0, x + BAR_SIZE.width, 0);
  for (let i = 0; i <= 8; i++)
    shade.addColorStop(i / 8, tensionCss(table, Math.round((i / 8) * (TABLE_SIZE - 1)) / (TABLE_SIZE - 1)));
  ink.fillStyle = shade;
  ink.fillRect(x, y + 3, BAR_SIZE.width, BAR_SIZE.height);
  ink.fillStyle = palette.ink;
  ink.fillText("0", x, y + 28);
  ink.textAlign = "right";
  ink.fillText(sayScene("legendInk.tensionKn", { words: words(end) }), x + BAR_SIZE.width, y + 28);
  ink.textAlign = "left";
  if (strengthKN === undefined) return;
  const inside = strengthKN <= end;
  const at = inside ? x + (BAR_SIZE.width * strengthKN) / end : x + BAR_SIZE.width + 10;
  ink.fillStyle = palette.fails;
  ink.fillRect(at - 1, y - 1, 2, BAR_SIZE.height + 8);
  ink.fillStyle = palette.failsInk;
  ink.fillText(
    sayScene("legendInk.strength5", { strength: quantity.strength(1000 * strengthKN) }),
    x + BAR_SIZE.width + 18,
    y + 13,
  );
}

/** Marks of the scale, which are round. */
const words = (kN: number): string => String(Number(kN.toPrecision(3)));
