/** A picture as a file: pixels, or lines and letters. */

import { drawSheet, laySheet, type Picture, sheetSvg } from "@secondline/figures";
import { sayFiles } from "@secondline/words/page/files";

/** Largest side and area that phones still make a canvas of [px]. */
const LARGEST_SIDE = 8192;
const LARGEST_AREA = 16_000_000;

/** PNG at `density` pixels to one of the screen's, or at the most that a canvas can have. */
export async function pngOf(picture: Picture, density: number): Promise<Blob> {
  await document.fonts.ready;
  const canvas = document.createElement("canvas");
  const context = canvas.getContext("2d");
  if (!context) throw new Error(sayFiles("encode.noCanvas"));
  const sheet = laySheet(picture, measure);
  const { width, height } = sheet;
  const fits = Math.min(density, LARGEST_SIDE / Math.max(width, height), Math.sqrt(LARGEST_AREA / (width * height)));
  canvas.width = Math.round(width * fits);
  canvas.height = Math.round(height * fits);
  context.scale(fits, fits);
  const { image, width: bodyWidth, height: bodyHeight } = picture.body;
  drawSheet(picture, sheet, context, (left, top) => {
    if (image) context.drawImage(image(fits), left, top, bodyWidth, bodyHeight);
  });
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"));
  if (!blob) throw new Error(sayFiles("encode.notMade"));
  return blob;
}

/** SVG; only of a picture without pixels. */
export const svgOf = (picture: Picture): string => sheetSvg(picture, roomy);

/** Where it is looked at the page's faces may be missing: others run this much wider [-]. */
const OTHER_FACE_RATIO = 1.16;
export const roomy = (text: string, font: string) => OTHER_FACE_RATIO * measure(text, font);

let pen: CanvasRenderingContext2D | null | undefined;

export function measure(text: string, font: string): number {
  pen ??= document.createElement("canvas").getContext("2d");
  if (!pen) return text.length * 8;
  pen.font = font;
  return pen.measureText(text).width;
}
