/** The colours of tokens.css, which drawings of every kind share. */
export { PALETTES, type Palette, type Theme } from "@secondline/figures";
