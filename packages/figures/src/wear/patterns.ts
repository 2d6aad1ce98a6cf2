/** The looks of the kinds of marks on a webbing. Each has a pattern of its own, so that a reader can tell it without colour. */
import type { Palette } from "../palette.ts";
import type { Tile } from "../shapes/shape.ts";

export type MarkKind = "span" | "falls" | "clamp" | "sewn" | "damage";

export const KIND_COLOUR: Readonly<Record<MarkKind, keyof Palette>> = {
  span: "softInk",
  falls: "lineMain",
  clamp: "lineBackup",
  sewn: "lineConnection",
  damage: "failsInk",
};

const tile = (name: string, size: number, d: string, colour: keyof Palette, strokeWidth = 1.2): Tile => ({
  name,
  size,
  d,
  colour,
  strokeWidth,
});

export const WEAR_TILES: readonly Tile[] = [
  tile("span", 6, "M0 3h6", "rule", 2),
  tile("falls", 6, "M1.5 1.5h.01M4.5 4.5h.01", KIND_COLOUR.falls, 2.2),
  tile("clamp", 5, "M0 0l5 5M5 0l-5 5", KIND_COLOUR.clamp),
  tile("sewn", 6, "M0 4l3-3 3 3", KIND_COLOUR.sewn, 1.4),
  tile("damage", 5, "M0 5l5-5M-1 1l2-2M4 6l2-2", KIND_COLOUR.damage, 1.4),
  tile("short", 6, "M0 6l6-6M-1 1l2-2M5 7l2-2", "failsInk", 1.3),
  tile("off", 7, "M0 0l7 7", "rule", 1.2),
];
