/** Our typefaces, for pages that must not fetch anything: their list, and how one is written into a page. */

export interface HouseFace {
  readonly family: string;
  readonly weight: string;
  /** File of the font package. */
  readonly file: string;
}

export const HOUSE_FACES = [
  {
    family: "IBM Plex Sans",
    weight: "400",
    file: "@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-400-normal.woff2",
  },
  {
    family: "IBM Plex Sans",
    weight: "600",
    file: "@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-600-normal.woff2",
  },
  {
    family: "Source Serif 4",
    weight: "200 900",
    file: "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2",
  },
] as const satisfies readonly HouseFace[];

/** A style rule with the typeface in it. `base64`: its WOFF2 file. */
export const faceRule = ({ family, weight }: HouseFace, base64: string): string =>
  `@font-face{font-family:"${family}";font-weight:${weight};src:url(data:font/woff2;base64,${base64}) format("woff2")}`;
