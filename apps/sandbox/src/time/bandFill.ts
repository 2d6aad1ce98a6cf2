import type { BandKind } from "@secondline/figures/time";

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
