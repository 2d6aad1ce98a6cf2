/** Colours that only the scene has: rock, contour lines, woods. */
import type { Theme } from "../design/palette.ts";

export interface StoneColours {
  readonly lit: string;
  readonly shade: string;
  readonly contour: string;
  readonly tree: string;
}
export const STONE: Readonly<Record<Theme, StoneColours>> = {
  light: { lit: "#f3efe6", shade: "#bdb7a8", contour: "#8d8778", tree: "#8b9484" },
  dark: { lit: "#39444a", shade: "#182024", contour: "#5b6970", tree: "#2c3a39" },
};
