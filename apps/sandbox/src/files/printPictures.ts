/** The pictures of a printed page: drawn anew as vectors. Its code comes when something is printed. */
import { createSvgInk } from "@secondline/figures";
import { type PictureSource, printedPictures } from "@secondline/workbench/pictures";
import { measure } from "../picture/encode.ts";

/** Each as an SVG document. */
export const printPictures = (source: Omit<PictureSource, "theme">, time: number): readonly string[] =>
  printedPictures(source, time).map(({ body, title }) => {
    const ink = createSvgInk(measure);
    body.draw(ink);
    return ink.document(body.width, body.height, title);
  });
