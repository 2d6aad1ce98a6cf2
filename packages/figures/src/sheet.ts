/**
 * A picture to pass on: the drawing, its title above, its legend, and the cautions and inputs below. All are part of the
 * picture, so that it never travels without them.
 */

import { type Ink, SANS, SERIF } from "./ink/ink.ts";
import { createSvgInk } from "./ink/svgInk.ts";
import type { Palette } from "./palette.ts";

export interface Picture {
  readonly words: PictureWords;
  readonly palette: Palette;
  readonly body: PictureBody;
  /** Drawn in a band under the body, from its upper left corner; `height` is the band's [px]. */
  readonly legend?: { readonly height: number; readonly draw: (ink: Ink, width: number) => void };
}

export interface PictureWords {
  readonly title: string;
  /** The title: the scene and its result. */
  readonly lines: readonly string[];
  readonly cautions: readonly string[];
  /** Version, input and date. */
  readonly foot: string;
}

export interface PictureBody {
  /** [px] */
  readonly width: number;
  readonly height: number;
  /** Pixels that lie under the ink of `draw`. */
  readonly image?: (density: number) => CanvasImageSource;
  /** The same in SVG. A body with an `image` needs it to be a vector drawing. */
  readonly markup?: string;
  readonly draw: (ink: Ink) => void;
}

/** A run of text in one style, already broken into lines. */
interface Block {
  readonly lines: readonly string[];
  readonly font: string;
  readonly colour: string;
  readonly step: number;
  readonly left: number;
  /** Height of the first line's foot [px]. */
  readonly top: number;
}

export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly bodyTop: number;
  readonly blocks: readonly Block[];
  readonly legendTop: number;
  readonly cautionsTop: number;
  readonly cautionsFoot: number;
}

/** Room at either edge of the sheet [px]. */
const SHEET_EDGE = 20;
/** Least width of the paper, so that words have room beside a narrow picture [px]. */
const LEAST_WIDTH = 360;

/** Places of everything on the sheet. `measure`: width of a text set in a CSS font [px]. */
export function laySheet(picture: Picture, measure: (text: string, font: string) => number): Sheet {
  const { words, palette, body, legend } = picture;
  const width = Math.max(body.width, LEAST_WIDTH);
  const blocks: Block[] = [];
  let y = SHEET_EDGE;
  const put = (text: string, font: string, colour: string, size: number, step: number, left = SHEET_EDGE): void => {
    const lines = brokenLines(text, width - left - SHEET_EDGE, (part) => measure(part, font));
    blocks.push({ lines, font, colour, step, left, top: y + size });
    y += lines.length * step;
  };
  put(words.title, `600 22px ${SERIF}`, palette.ink, 20, 28);
  for (const line of words.lines) put(line, `400 15px ${SERIF}`, palette.ink, 16, 21);
  const bodyTop = y + 12;
  y = bodyTop + body.height;
  const legendTop = y + 12;
  if (legend) y = legendTop + legend.height;
  const cautionsTop = y + 14;
  y = cautionsTop;
  for (const caution of words.cautions) {
    put(caution, `400 13px ${SANS}`, palette.ink, 13, 17, SHEET_EDGE + 14);
    y += 3;
  }
  const cautionsFoot = y;
  y += 10;
  put(words.foot, `400 12px ${SANS}`, palette.softInk, 12, 16);
  return { width, height: Math.ceil(y + SHEET_EDGE - 4), bodyTop, blocks, legendTop, cautionsTop, cautionsFoot };
}

/** Draws the sheet; `putImage` puts the pixels of the body at a place [px]. */
export function drawSheet(
  picture: Picture,
  sheet: Sheet,
  ink: Ink,
  putImage: (left: number, top: number) => void,
): void {
  const { palette, body, legend } = picture;
  const { width, height, bodyTop } = sheet;
  ink.globalAlpha = 1;
  ink.fillStyle = palette.paper;
  ink.fillRect(0, 0, width, height);
  const left = Math.round((width - body.width) / 2);
  if (body.image || body.markup !== undefined) putImage(left, bodyTop);
  ink.save();
  ink.beginPath();
  ink.rect(left, bodyTop, body.width, body.height);
  ink.clip();
  ink.translate(left, bodyTop);
  body.draw(ink);
  ink.restore();
  ink.fillStyle = palette.rule;
  ink.fillRect(0, bodyTop - 1, width, 1);
  ink.fillRect(0, bodyTop + body.height, width, 1);
  if (legend) {
    ink.save();
    ink.translate(SHEET_EDGE, sheet.legendTop);
    legend.draw(ink, width - 2 * SHEET_EDGE);
    ink.restore();
  }
  // The bar that marks cautions everywhere.
  ink.fillStyle = palette.thin;
  ink.fillRect(SHEET_EDGE, sheet.cautionsTop, 3, sheet.cautionsFoot - sheet.cautionsTop);
  ink.textAlign = "left";
  for (const block of sheet.blocks) {
    ink.font = block.font;
    ink.fillStyle = block.colour;
    block.lines.forEach((line, i) => {
      ink.fillText(line, block.left, block.top + i * block.step);
    });
  }
}

/**
 * The sheet as an SVG document; only of a picture without pixels. `measure`: width of a text set in a CSS font [px], rather too
 * wide than too narrow, because the reader may lack the typefaces.
 */
export function sheetSvg(picture: Picture, measure: (text: string, font: string) => number): string {
  const { image, markup, width, height } = picture.body;
  if (image && markup === undefined) throw new Error("this picture is made of pixels and cannot be an SVG");
  const ink = createSvgInk(measure);
  const sheet = laySheet(picture, measure);
  drawSheet(picture, sheet, ink, (left, top) =>
    ink.insert(`<svg x="${left}" y="${top}" width="${width}" height="${height}">${markup}</svg>`),
  );
  const { title, lines } = picture.words;
  return ink.document(sheet.width, sheet.height, [title, ...lines].join(". "));
}

/** Lines no wider than `room`, broken between words; a word that is wider by itself is broken anywhere. */
export function brokenLines(text: string, room: number, widthOf: (text: string) => number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (widthOf(longer) <= room) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    line = word;
    while (widthOf(line) > room && line.length > 1) {
      let fits = line.length - 1;
      while (fits > 1 && widthOf(line.slice(0, fits)) > room) fits--;
      lines.push(line.slice(0, fits));
      line = line.slice(fits);
    }
  }
  return line === "" ? lines : [...lines, line];
}
