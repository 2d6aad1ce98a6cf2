/**
 * Tension as colour: a straight path through CIELAB from blue to yellow, so that equal steps of tension look like equal
 * steps of colour (in the manner of the cividis map, Nunez et al. 2018, PLoS ONE 13(7)) and lightness alone, in a black
 * and white print, still orders them. The ends are chosen per theme so that the whole path stands out from the paper.
 */
import type { Theme } from "../../palette.ts";

export const TABLE_SIZE = 64;

type Lab = readonly [lightness: number, a: number, b: number];
const ENDS: Readonly<Record<Theme, readonly [Lab, Lab]>> = {
  light: [
    [26, 4, -34],
    [59, 8, 60],
  ],
  dark: [
    [52, 2, -42],
    [91, -4, 66],
  ],
};

/** TABLE_SIZE × 3 bytes, sRGB, slack first. */
export function tensionTable(theme: Theme): Uint8Array {
  const table = new Uint8Array(TABLE_SIZE * 3);
  const [from, to] = ENDS[theme];
  for (let i = 0; i < TABLE_SIZE; i++) {
    const s = i / (TABLE_SIZE - 1);
    const rgb = labToSrgb([mix(from[0], to[0], s), mix(from[1], to[1], s), mix(from[2], to[2], s)]);
    for (let c = 0; c < 3; c++) table[3 * i + c] = Math.round(255 * rgb[c]!);
  }
  return table;
}

/** The same as TABLE_SIZE opaque texels, RGBA. */
export function tensionTexels(theme: Theme): Uint8Array {
  const rgb = tensionTable(theme);
  const texels = new Uint8Array(TABLE_SIZE * 4).fill(255);
  for (let i = 0; i < TABLE_SIZE; i++) texels.set(rgb.subarray(3 * i, 3 * i + 3), 4 * i);
  return texels;
}

/** CSS colour of a tension as a share of the scale's end [-]. */
export function tensionCss(table: Uint8Array, share: number): string {
  const i = 3 * Math.round(Math.min(Math.max(share, 0), 1) * (TABLE_SIZE - 1));
  return `rgb(${table[i]} ${table[i + 1]} ${table[i + 2]})`;
}

/** CSS gradient of the whole table, from left to right. */
export function tensionGradient(table: Uint8Array): string {
  const stops: string[] = [];
  for (let i = 0; i <= 8; i++) stops.push(`${tensionCss(table, i / 8)} ${(100 * i) / 8}%`);
  return `linear-gradient(to right, ${stops.join(", ")})`;
}

/** End of the tension scale for a run: a round number that the largest tension just fits under [N]. */
export function scaleEnd(largest: number): number {
  const steps = [1, 1.5, 2, 3, 4, 5, 6, 8, 10];
  const value = Math.max(largest, 500);
  const decade = 10 ** Math.floor(Math.log10(value));
  return decade * (steps.find((step) => step * decade >= value) ?? 10);
}

function mix(a: number, b: number, s: number): number {
  return a + (b - a) * s;
}

/** CIE 1976 L*a*b* (white D65) to sRGB in 0..1 (IEC 61966-2-1), clipped to the gamut. */
function labToSrgb([lightness, a, b]: Lab): readonly number[] {
  const fy = (lightness + 16) / 116;
  const x = 0.95047 * inverseF(fy + a / 500);
  const y = inverseF(fy);
  const z = 1.08883 * inverseF(fy - b / 200);
  return [
    gamma(3.2406 * x - 1.5372 * y - 0.4986 * z),
    gamma(-0.9689 * x + 1.8758 * y + 0.0415 * z),
    gamma(0.0557 * x - 0.204 * y + 1.057 * z),
  ];
}

function inverseF(t: number): number {
  return t > 6 / 29 ? t * t * t : 3 * (6 / 29) ** 2 * (t - 4 / 29);
}

function gamma(linear: number): number {
  const value = Math.min(Math.max(linear, 0), 1);
  return value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055;
}
