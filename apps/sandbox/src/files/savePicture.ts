/** Pictures as files. In a file of its own, so that its code comes only when it is asked for. */
import type { Picture } from "@secondline/figures";
import { fileName } from "@secondline/workbench";
import { downloadBlob } from "../device/download.ts";
import { pngOf, svgOf } from "../picture/encode.ts";

/** `png2` has twice as many pixels each way as the screen shows. */
export type PictureKind = "png" | "png2" | "svg";

export async function savePicture(picture: Picture, kind: PictureKind, name: string): Promise<void> {
  if (kind === "svg") downloadBlob(new Blob([svgOf(picture)], { type: "image/svg+xml" }), fileName(name, "svg"));
  else downloadBlob(await pngOf(picture, kind === "png2" ? 2 : 1), fileName(name, "png"));
}
