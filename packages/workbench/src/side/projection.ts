/** Where a place of the rig lies in a drawing from the side, and back. */
import type { FlatView } from "@secondline/figures/scene";

export interface Projection {
  /** Size of the drawing [px]. */
  readonly width: number;
  readonly height: number;
  /** Metres to pixels. */
  readonly px: (x: number) => number;
  readonly py: (z: number) => number;
  /** Pixels to metres. */
  readonly x: (px: number) => number;
  readonly z: (py: number) => number;
  /** [px/m] */
  readonly perMetre: { readonly x: number; readonly z: number };
  /** Height at which a connection is drawn [m]. */
  readonly lineAt: (x: number) => number;
}

interface Frame {
  /** Place in the middle of the drawing [m]. */
  readonly x: number;
  readonly z: number;
  readonly scaleX: number;
  readonly scaleZ: number;
  readonly width: number;
  readonly height: number;
}

export function projectionOf(
  { x: cx, z: cz, scaleX, scaleZ, width, height }: Frame,
  lineAt: Projection["lineAt"],
): Projection {
  return {
    width,
    height,
    px: (x) => width / 2 + (x - cx) * scaleX,
    py: (z) => height / 2 - (z - cz) * scaleZ,
    x: (px) => cx + (px - width / 2) / scaleX,
    z: (py) => cz - (py - height / 2) / scaleZ,
    perMetre: { x: scaleX, z: scaleZ },
    lineAt,
  };
}

/** The projection of a picture that the elevation draws. */
export const flatProjection = (
  { x, z, scale }: FlatView,
  size: { readonly width: number; readonly height: number },
  lineAt: Projection["lineAt"],
): Projection => projectionOf({ x, z, scaleX: scale, scaleZ: scale, ...size }, lineAt);
