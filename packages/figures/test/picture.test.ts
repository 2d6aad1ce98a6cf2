/** Pictures that are passed on: drawn by the same code as the screen's, and never without their cautions. */

import { englishWords } from "@secondline/words";
import { describe, expect, it } from "vitest";
import { createSvgInk } from "../src/ink/svgInk.ts";
import { PALETTES } from "../src/palette.ts";
import { roundTicks } from "../src/roundTicks.ts";
import { drawElevation } from "../src/scene/elevation/drawElevation.ts";
import { createStage } from "../src/scene/stage.ts";
import { brokenLines, drawSheet, laySheet, type Picture } from "../src/sheet.ts";
import { timePicture } from "../src/time/timePicture.ts";
import { shownAtFirst, tracesOf } from "../src/time/traces.ts";
import { syntheticRecording, syntheticRig } from "./syntheticRecording.ts";
import { timeRecording } from "./timeRecording.ts";

/** Letters as wide as they are in most faces, on average. */
const measure = (text: string, font: string) => 0.5 * text.length * Number(/([\d.]+)px/.exec(font)?.[1]);
const palette = PALETTES.light;
const CAUTIONS = englishWords.generalCautions();
const fall = syntheticRecording();

/** The elements of a document in order; throws where it is not well-formed. */
function elementsOf(svg: string): string[] {
  const open: string[] = [];
  const seen: string[] = [];
  for (const piece of svg.split("<").slice(1)) {
    const inside = piece.slice(0, piece.indexOf(">"));
    const name = /^\/?([A-Za-z]+)/.exec(inside)?.[1];
    expect(name, inside.slice(0, 40)).toBeDefined();
    if (inside.startsWith("/")) expect(open.pop()).toBe(name);
    else {
      seen.push(name!);
      if (!inside.endsWith("/")) open.push(name!);
    }
  }
  expect(open).toEqual([]);
  expect(/NaN|undefined|Infinity/.exec(svg)?.[0]).toBeUndefined();
  return seen;
}

/** A failure names what is missing, not the whole drawing. */
function expectIn(svg: string, part: string): void {
  expect(svg.includes(part), `the drawing holds ${part}`).toBe(true);
}

describe("an ink that writes SVG", () => {
  it("draws paths where a canvas would, moved and turned", () => {
    const ink = createSvgInk(measure);
    ink.save();
    ink.translate(10, 20);
    ink.rotate(Math.PI / 2);
    ink.beginPath();
    ink.moveTo(5, 0);
    ink.lineTo(0, 5);
    ink.strokeStyle = "rgb(1 2 255)";
    ink.stroke();
    ink.restore();
    ink.beginPath();
    ink.arc(50, 50, 10, 0, 2 * Math.PI);
    ink.fillStyle = "#11223380";
    ink.fill();
    const svg = ink.document(100, 100, "A <rig> & more");
    expectIn(svg, 'd="M10 25L5 20" fill="none" stroke="#0102ff"');
    // A whole circle in two halves, and what is seen through apart from its colour.
    expectIn(svg, 'd="M60 50A10 10 0 0 1 40 50A10 10 0 0 1 60 50" fill="#112233" fill-opacity="0.5"');
    expectIn(svg, "<title>A &lt;rig&gt; &amp; more</title>");
    elementsOf(svg);
  });

  it("keeps a clip to the shapes drawn under it", () => {
    const ink = createSvgInk(measure);
    ink.save();
    ink.beginPath();
    ink.rect(0, 0, 10, 10);
    ink.clip();
    ink.fillRect(0, 0, 20, 20);
    ink.restore();
    ink.fillText("free", 5, 5);
    const svg = ink.document(20, 20, "clip");
    expect(svg.indexOf("</g>")).toBeLessThan(svg.indexOf("free"));
    expect(svg.indexOf("</g>")).toBeGreaterThan(svg.indexOf("<rect"));
    elementsOf(svg);
  });

  it("refuses a colour that it cannot write, rather than drawing black", () => {
    const ink = createSvgInk(measure);
    ink.fillStyle = "color-mix(in srgb, red, blue)";
    expect(() => ink.fillRect(0, 0, 1, 1)).toThrow("cannot use the colour");
  });
});

describe("a picture's sheet", () => {
  const picture: Picture = {
    words: {
      title: "Rig & <gap>",
      lines: ["Main line fails at anchor A."],
      cautions: CAUTIONS,
      foot: "Secondline, input 0123456789abcdef",
    },
    palette,
    body: { width: 360, height: 200, draw: (ink) => ink.fillText("in the body", 4, 20) },
    legend: { height: 40, draw: (ink) => ink.fillText("legend", 0, 12) },
  };

  it("bears title, body, legend, every word of every caution and the foot, one under the other", () => {
    const ink = createSvgInk(measure);
    const sheet = laySheet(picture, measure);
    drawSheet(picture, sheet, ink, () => undefined);
    const svg = ink.document(sheet.width, sheet.height, "picture");
    elementsOf(svg);
    const texts = [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*>([^<]*)</g)];
    const said = texts.map(([, , , text]) => text).join(" ");
    for (const word of CAUTIONS.join(" ").split(" ")) expect(said).toContain(word);
    const height = (start: string) => Number(texts.find(([, , , text]) => text!.startsWith(start))![2]);
    const heights = ["Rig &amp;", "in the body", "legend", "This is a model", "Secondline"].map(height);
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
    expect(heights.at(-1)).toBeLessThan(sheet.height);
  });

  it("breaks lines between words, and a word that is too long anywhere, losing none of it", () => {
    const width = (text: string) => text.length;
    expect(brokenLines("the backup caught you", 10, width)).toEqual(["the backup", "caught you"]);
    const long = brokenLines(`a ${"x".repeat(25)} b`, 10, width);
    expect(long.join("").replaceAll(" ", "")).toBe(`a${"x".repeat(25)}b`);
    expect(Math.max(...long.map(width))).toBeLessThanOrEqual(10);
  });
});

it("the elevation in SVG has the rock, both lines, the walker and the measured words of the screen's", () => {
  const stage = createStage(fall, syntheticRig(), undefined);
  const ink = createSvgInk(measure);
  const options = { showForces: true, wide: true };
  drawElevation({ stage, palette, theme: "light", wholeRig: true, options }, ink, 1200, 600, fall.duration);
  const svg = ink.document(1200, 600, "side");
  const elements = elementsOf(svg);
  expect(elements.filter((name) => name === "path").length).toBeGreaterThan(30);
  for (const words of ["Anchor A", "Anchor B", "Main line fails at anchor A", "drop "]) expectIn(svg, words);
  expectIn(svg, 'stroke-dasharray="9 6"');
  // Nothing of it lies far out of the picture, as it would if a length were taken for pixels.
  const xs = [...svg.matchAll(/[ML](-?[\d.]+) -?[\d.]+/g)].map(([, x]) => Number(x));
  expect(Math.min(...xs)).toBeGreaterThan(-3000);
  expect(Math.max(...xs)).toBeLessThan(4200);
});

describe("plots in SVG", () => {
  const recording = timeRecording();
  const range = { from: 0, to: recording.duration };
  const shownIds = shownAtFirst(recording);
  const forces = {
    shown: tracesOf(recording).filter(({ id }) => shownIds.has(id)),
    reading: "raw",
    rawBehind: false,
    highlight: null,
  } as const;

  it.each([
    ["forces", forces],
    ["energy", null],
  ])("%s stay inside of their frame, with the axis in its unit and a name for every trace", (_what, shown) => {
    const ink = createSvgInk(measure);
    const body = timePicture({ recording, previous: undefined, range, time: 1, forces: shown }, palette);
    body.draw(ink);
    const svg = ink.document(body.width, body.height, "plot");
    elementsOf(svg);
    expectIn(svg, shown ? "kN</text>" : "kJ</text>");
    for (const { name } of shown?.shown ?? []) expectIn(svg, `>${name}</text>`);
    const ys = [...svg.matchAll(/[ML]-?[\d.]+ (-?[\d.]+)/g)].map(([, y]) => Number(y));
    expect(Math.min(...ys)).toBeGreaterThan(-2);
    expect(Math.max(...ys)).toBeLessThan(body.height + 2);
  });

  it("puts ticks at round values inside of the range", () => {
    expect(roundTicks(0, 8, 4)).toEqual([0, 2, 4, 6, 8]);
    expect(roundTicks(1.02, 1.31, 5)).toEqual([1.1, 1.2, 1.3]);
  });
});
