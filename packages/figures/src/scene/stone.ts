/** Colours that only the scene has: rock, contour lines, woods. */
import type { Theme } from "../palette.ts";

export interface StoneColours {
  readonly lit: string;
  readonly shade: string;
  readonly contour: string;
  readonly tree: string;
  readonly far: string;
}
export const STONE: Readonly<Record<Theme, StoneColours>> = {
  light: { lit: "#f4f0e7", shade: "#b3ad9d", contour: "#8d8778", tree: "#909887", far: "#b3ad9d" },
  dark: { lit: "#3d494f", shade: "#1a2226", contour: "#5f6e75", tree: "#34423f", far: "#56656c" },
};
