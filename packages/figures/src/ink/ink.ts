/**
 * The part of a canvas' 2D context that drawings use. A canvas serves for drawings on the screen, an SvgInk for vector drawings
 * that are kept; the drawing code is the same.
 */
export type Ink = Pick<
  CanvasRenderingContext2D,
  | "fillStyle"
  | "strokeStyle"
  | "lineWidth"
  | "lineCap"
  | "lineJoin"
  | "lineDashOffset"
  | "globalAlpha"
  | "font"
  | "textAlign"
  | "beginPath"
  | "moveTo"
  | "lineTo"
  | "arc"
  | "rect"
  | "closePath"
  | "fill"
  | "stroke"
  | "clip"
  | "fillRect"
  | "fillText"
  | "save"
  | "restore"
  | "translate"
  | "rotate"
  | "setLineDash"
> & {
  createLinearGradient(
    x0: number,
    y0: number,
    x1: number,
    y1: number,
  ): { addColorStop(at: number, colour: string): void };
  measureText(text: string): { readonly width: number };
};

/** The two typefaces of the page, for text on a canvas or in a drawing. */
export const SERIF = '"Source Serif 4", "Iowan Old Style", Georgia, serif';
export const SANS = '"IBM Plex Sans", "Segoe UI", system-ui, sans-serif';
