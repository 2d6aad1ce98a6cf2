/**
 * A drawing as a list of shapes: where each lies, and how it looks. The page makes an element of each; nothing here can be pressed or moved.
 * Lengths are in pixels of the drawing, `y` grows downwards.
 */
import type { Palette } from "../palette.ts";

/** A colour of the palette by its name, or a pattern of the drawing. */
export type Paint = keyof Palette | "none" | "transparent" | { readonly pattern: string };

export interface ShapeLook {
  /** Class or classes of the shape in the page's style sheet. */
  readonly styled?: string | readonly string[] | undefined;
  readonly fill?: Paint;
  readonly stroke?: Paint;
  readonly strokeWidth?: number;
  readonly strokeDasharray?: string;
  readonly strokeLinecap?: "round";
  readonly strokeLinejoin?: "round";
  readonly opacity?: number;
  /** Name of the stretch of the drawing inside of which the shape is visible. */
  readonly clip?: string | undefined;
  readonly transform?: string;
}

export interface TextLook extends ShapeLook {
  readonly textAnchor?: "start" | "middle" | "end";
  readonly fontWeight?: number;
}

export type Shape =
  | (ShapeLook & { readonly kind: "path"; readonly d: string })
  | (ShapeLook & Box & { readonly kind: "rect"; readonly rx?: number | undefined })
  | (ShapeLook & { readonly kind: "circle"; readonly cx: number; readonly cy: number; readonly r: number })
  | (TextLook & { readonly kind: "text"; readonly x: number; readonly y: number; readonly words: string })
  | (ShapeLook & {
      readonly kind: "group";
      readonly inside: readonly Shape[];
      /** Shown where the pointer rests on it. */
      readonly title?: string;
      /** Screen readers skip the shape, because words elsewhere say the same. */
      readonly unspoken?: boolean;
    });

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const path = (d: string, look: ShapeLook = {}): Shape => ({ kind: "path", d, ...look });

export const rect = (box: Box, look: ShapeLook & { readonly rx?: number } = {}): Shape => ({
  kind: "rect",
  ...box,
  ...look,
});

export const circle = (cx: number, cy: number, r: number, look: ShapeLook = {}): Shape => ({
  kind: "circle",
  cx,
  cy,
  r,
  ...look,
});

export const text = (words: string, x: number, y: number, look: TextLook = {}): Shape => ({
  kind: "text",
  words,
  x,
  y,
  ...look,
});

export const group = (inside: readonly Shape[], look: ShapeLook & { readonly title?: string } = {}): Shape => ({
  kind: "group",
  inside,
  ...look,
});

export const unspoken = (inside: readonly Shape[], look: ShapeLook = {}): Shape => ({
  kind: "group",
  inside,
  unspoken: true,
  ...look,
});

/** A tile that fills shapes, drawn with one stroke; a shape names it by `{ pattern: name }`. */
export interface Tile {
  readonly name: string;
  readonly size: number;
  readonly d: string;
  readonly colour: keyof Palette;
  readonly strokeWidth: number;
}
