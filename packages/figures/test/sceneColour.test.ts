import { expect, it } from "vitest";
import { PALETTES } from "../src/palette.ts";
import { legendOf } from "../src/scene/legend.ts";
import { scaleEnd, TABLE_SIZE, tensionTable, tensionTexels } from "../src/scene/shape/tensionColour.ts";

/** Relative luminance (WCAG 2.2). */
function luminance(r: number, g: number, b: number): number {
  const linear = [r, g, b].map((v) => (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4));
  return 0.2126 * linear[0]! + 0.7152 * linear[1]! + 0.0722 * linear[2]!;
}

it.each(["light", "dark"] as const)("more tension is lighter all the way (%s)", (theme) => {
  const table = tensionTable(theme);
  let before = -1;
  for (let i = 0; i < TABLE_SIZE; i++) {
    const now = luminance(table[3 * i]!, table[3 * i + 1]!, table[3 * i + 2]!);
    expect(now).toBeGreaterThan(before);
    before = now;
  }
});

it.each(["light", "dark"] as const)("every tension stands out from the paper by 3:1 (%s)", (theme) => {
  const table = tensionTable(theme);
  const paper = PALETTES[theme].paper;
  const sheet = luminance(
    ...([1, 3, 5].map((i) => Number.parseInt(paper.slice(i, i + 2), 16)) as [number, number, number]),
  );
  for (let i = 0; i < TABLE_SIZE; i++) {
    const ink = luminance(table[3 * i]!, table[3 * i + 1]!, table[3 * i + 2]!);
    const contrast = (Math.max(ink, sheet) + 0.05) / (Math.min(ink, sheet) + 0.05);
    expect(contrast).toBeGreaterThan(3);
  }
});

it("the scale ends at a round number that holds the largest tension", () => {
  expect(scaleEnd(5537)).toBe(6000);
  expect(scaleEnd(3000)).toBe(3000);
  expect(scaleEnd(12001)).toBe(15000);
  expect(scaleEnd(0)).toBe(500);
});

it("the texels of the tension table are its colours, opaque", () => {
  const [rgb, texels] = [tensionTable("light"), tensionTexels("light")];
  for (let i = 0; i < TABLE_SIZE; i++)
    expect([...texels.subarray(4 * i, 4 * i + 4)]).toEqual([...rgb.subarray(3 * i, 3 * i + 3), 255]);
});

it("the legend names the lines that are drawn, each told from the others without colour", () => {
  const facts = { largest: 5537, hasBackup: true, hasPrevious: true };
  const { lines, marks } = legendOf(facts);
  expect(lines.map(({ name }) => name)).toEqual(["main line", "backup", "run before"]);
  expect(new Set(lines.map(({ strokes }) => JSON.stringify(strokes))).size).toBe(3);
  expect(marks).toEqual(["3", "6"]);
  expect(legendOf({ ...facts, hasBackup: false, hasPrevious: false }).lines).toHaveLength(1);
});

it("a strength stands on the scale, or beyond its end, and is told in both cases", () => {
  const facts = { largest: 5537, hasBackup: false, hasPrevious: false };
  expect(legendOf(facts).strength).toBeUndefined();
  expect(legendOf({ ...facts, strengthKN: 3 }).strength).toMatchObject({
    share: 0.5,
    text: expect.stringContaining("3"),
  });
  const beyond = legendOf({ ...facts, strengthKN: 22 }).strength!;
  expect(beyond.share).toBeUndefined();
  expect(beyond.text).toContain("22");
});
