import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { PALETTES, type Palette, type Theme } from "../src/design/palette.ts";

const css = readFileSync(new URL("../src/design/tokens.css", import.meta.url), "utf8");

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const channels = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255);
  const [r, g, b] = channels.map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)) as [
    number,
    number,
    number,
  ];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

const WORDS: readonly (keyof Palette)[] = ["ink", "softInk", "accent", "holdsInk", "thinInk", "failsInk", "openInk"];
const GROUNDS: readonly (keyof Palette)[] = ["paper", "raised", "accentWash"];
const SHAPES: readonly (keyof Palette)[] = [
  "edge",
  "holds",
  "fails",
  "open",
  "lineMain",
  "lineBackup",
  "lineLeash",
  "lineConnection",
];

it("keeps the canvas palette equal to the tokens of the page", () => {
  for (const [name, light] of Object.entries(PALETTES.light)) {
    const token = name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    const dark = PALETTES.dark[name as keyof Palette];
    expect(css).toContain(`--${token}: light-dark(${light}, ${dark});`);
  }
});

it.each<Theme>(["light", "dark"])("lets every word be read on every ground (%s)", (theme) => {
  const palette = PALETTES[theme];
  const poor = WORDS.flatMap((word) =>
    GROUNDS.filter((ground) => contrast(palette[word], palette[ground]) < 4.5).map((ground) => `${word} on ${ground}`),
  );
  expect(poor).toEqual([]);
  expect(contrast(palette.onAccent, palette.accent)).toBeGreaterThanOrEqual(4.5);
});

it.each<Theme>(["light", "dark"])("lets shapes, edges and lines be told from the paper (%s)", (theme) => {
  const palette = PALETTES[theme];
  expect(SHAPES.filter((shape) => contrast(palette[shape], palette.paper) < 3)).toEqual([]);
});
