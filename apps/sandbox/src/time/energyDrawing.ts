import type { BandKind, EnergyStack, PlotDrawing, PlotSeries } from "@secondline/figures/time";
import type { Palette } from "../design/palette.ts";

/** Series are the edges between the bands, from the bottom up; every band is filled down to the edge below it. */
export function energyDrawing(stack: EnergyStack, palette: Palette): PlotDrawing<string | CanvasPattern> {
  const edges = [null, ...stack.bands].map(
    (band): PlotSeries => ({
      stroke: band === null ? "transparent" : palette[band.kind === "height" ? "softInk" : band.colour],
      width: band === null ? 0 : 1,
      dash: [],
      alpha: 1,
    }),
  );
  const bands = stack.bands.map((band, i) => ({
    series: [i + 2, i + 1] as const,
    fill: bandFill(band.kind, palette[band.colour]),
  }));
  return { series: edges, bands };
}

/** Tints and strokes that also differ without colour: lost is hatched, moving dotted, stored plain, height bare. */
export function bandFill(kind: BandKind, colour: string): CanvasPattern | string {
  if (kind === "height") return `${colour}14`;
  if (kind === "stored") return `${colour}38`;
  return kind === "lost" ? patternOf(colour, hatch) : patternOf(colour, dots);
}

const TILE_SIZE = 6;

function patternOf(colour: string, paint: (pen: OffscreenCanvasRenderingContext2D) => void): CanvasPattern | string {
  const scale = Math.max(Math.round(devicePixelRatio), 1);
  const tile = new OffscreenCanvas(TILE_SIZE * scale, TILE_SIZE * scale);
  const pen = tile.getContext("2d");
  if (!pen) return `${colour}70`;
  pen.scale(scale, scale);
  pen.fillStyle = `${colour}40`;
  pen.fillRect(0, 0, TILE_SIZE, TILE_SIZE);
  pen.strokeStyle = pen.fillStyle = `${colour}c0`;
  paint(pen);
  return pen.createPattern(tile, "repeat") ?? `${colour}70`;
}

function hatch(pen: OffscreenCanvasRenderingContext2D): void {
  pen.lineWidth = 1;
  pen.beginPath();
  for (const shift of [-TILE_SIZE, 0, TILE_SIZE]) {
    pen.moveTo(shift - 1, TILE_SIZE + 1);
    pen.lineTo(shift + TILE_SIZE + 1, -1);
  }
  pen.stroke();
}

function dots(pen: OffscreenCanvasRenderingContext2D): void {
  pen.fillRect(1, 1, 1.4, 1.4);
  pen.fillRect(4, 4, 1.4, 1.4);
}
