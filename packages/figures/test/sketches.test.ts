/** Sketches of a rig from the side, and the drawings of lessons. */
import { readRig } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import demo from "../../../demo-data/sound-rig.json" with { type: "json" };
import type { Shape } from "../src/index.ts";
import { alongRibbon, CURVE_SIZE, dotStrip, ribbonHeight, sweepCurve } from "../src/lessons/index.ts";
import { plainSide, rigSketch } from "../src/sketch/index.ts";

const read = readRig(demo);
if (!read.ok) throw new Error(JSON.stringify(read.issues[0]));
const { rig } = read;

const flat = (shapes: readonly Shape[]): readonly Shape[] =>
  shapes.flatMap((shape) => (shape.kind === "group" ? [shape, ...flat(shape.inside)] : [shape]));
const wordsIn = (shapes: readonly Shape[]): readonly string[] =>
  flat(shapes).flatMap((shape) => (shape.kind === "text" ? [shape.words] : []));
const styledAs = (shapes: readonly Shape[], name: string) =>
  flat(shapes).filter(({ styled }) => [styled].flat().includes(name));

describe("a sketch of the rig", () => {
  it("marks the part whose field is edited, and nothing while none is", () => {
    const marked = (editing?: string) =>
      styledAs(rigSketch(rig, editing), "marked").map(({ styled }) => [styled].flat().join(" "));
    expect(marked()).toEqual([]);
    expect(marked("main.pretension")).toEqual(["line marked"]);
    expect(marked("leash.length")).toEqual(["walker marked"]);
    expect(marked("backup.slack")).toEqual(["backup marked"]);
    expect(marked("anchorB.points[0].strength")).toEqual(["anchor marked"]);
  });

  it("has every connection and tape of the backup, and no backup where there is none", () => {
    const joints = (of: typeof rig) => [
      ...styledAs(rigSketch(of, undefined), "connection"),
      ...styledAs(rigSketch(of, undefined), "tape"),
    ];
    expect(joints(rig)).toHaveLength(rig.backup!.connections.length);
    const { backup: _, ...alone } = rig;
    expect(joints(alone)).toEqual([]);
    expect(styledAs(rigSketch(alone, undefined), "backup")).toEqual([]);
  });

  it("says how long the span is", () => {
    expect(wordsIn(rigSketch({ ...rig, span: 75 }, undefined)).join()).toContain("75");
  });
});

describe("a rig from the side", () => {
  const frame = { width: 400, height: 200, px: (x: number) => 50 + 5 * x, py: (z: number) => 50 - 5 * z };

  it("has rock from edge to edge where the ground is known, and none where it is not", () => {
    const points = [
      [0, -2],
      [30, -20],
      [60, -1],
    ] as const;
    const [rock] = styledAs(plainSide({ span: 60, rise: 1, points }, frame), "rock");
    expect(rock).toMatchObject({ d: "M-4 204L-4 60L0 60L50 60L200 150L350 55L400 55L404 55V204Z" });
    expect(styledAs(plainSide({ span: 60, rise: 1, points: [] }, frame), "rock")).toEqual([]);
  });

  it("measures the span, and the ground down to its lowest point", () => {
    const words = wordsIn(
      plainSide(
        {
          span: 60,
          rise: 1,
          points: [
            [0, -2],
            [30, -20],
          ],
        },
        frame,
      ),
    );
    expect(words.slice(0, 2)).toEqual(["A", "B"]);
    expect(words[2]).toContain("60");
    expect(words[3]).toContain("20");
  });
});

describe("drawings of lessons", () => {
  it("set the load along a line beside its strength, on one scale", () => {
    const shapes = alongRibbon({
      width: 640,
      zones: [
        { to: 40, strength5: 20_000 },
        { to: 80, strength5: 10_000 },
      ],
      length: 80,
      top: 20_000,
      mark: { from: 20, to: 20.5 },
      loads: [
        { from: 0, to: 40, force: 10_000 },
        { from: 40, to: 80, force: 10_000 },
      ],
      words: { holds: "holds", carries: "carries", mark: "here" },
    });
    const [holds, carries] = [styledAs(shapes, "holds")[0], styledAs(shapes, "carries")[0]];
    expect(holds).toMatchObject({ d: "M44 22H336V64H628" });
    expect(carries).toMatchObject({ d: "M190 64L482 64" });
    expect(styledAs(shapes, "mark")).toMatchObject([{ x: 190, width: 6 }]);
    expect(wordsIn(shapes)).toContain("here");
  });

  it("are drawn as wide as a phone, with their letters no smaller and the key of a ribbon in two rows", () => {
    const words = { holds: "holds", carries: "carries", mark: undefined };
    const facts = { zones: [{ to: 80, strength5: 20_000 }], length: 80, top: 20_000, loads: [], words };
    const textAt = (width: number, said: string) =>
      alongRibbon({ width, ...facts }).find((one) => one.kind === "text" && one.words === said)!;
    expect(textAt(640, "carries")).toMatchObject({ x: 414, y: ribbonHeight(640) - 8 });
    expect(textAt(350, "carries")).toMatchObject({ x: 104, y: ribbonHeight(350) - 8 });
    expect(textAt(350, "B")).toMatchObject({ x: 338 });
    const farthest = dotStrip([4000, 5000, 6000], 350).shapes.flatMap((one) => (one.kind === "circle" ? one.cx : []));
    expect(Math.max(...farthest)).toBe(334);
    const points = [0, 10].map((at) => ({ at, value: 4, low: 3, high: 5 }));
    const curve = sweepCurve({ width: 350, from: 0, to: 10, points, crossing: undefined });
    expect(styledAs(curve, "curve")[0]).toMatchObject({ d: expect.stringMatching(/^M48 .*L324 /) });
  });

  it("pile up falls that came to the same load, and tell the hardest", () => {
    const apart = dotStrip([4000, 5000, 6000]);
    const same = dotStrip([4000, 5000, 5000, 5000, 6000]);
    expect(same.height - apart.height).toBe(20);
    expect(styledAs(same.shapes, "dot")).toHaveLength(4);
    expect(styledAs(same.shapes, "hardest")).toHaveLength(1);
  });

  it("draw falls of one load, too", () => {
    expect(JSON.stringify(dotStrip([5000, 5000]))).not.toMatch(/null|NaN/);
  });

  it("show where a curve meets its limit and between which ends, or no limit where it meets none", () => {
    const points = [
      { at: 0, value: 4, low: 3, high: 5 },
      { at: 10, value: 8, low: 7, high: 10 },
    ];
    const crossing = { limit: 5, at: 2.5, low: 2, high: 3, words: "limit" };
    const curve = (met: typeof crossing | undefined) => sweepCurve({ from: 0, to: 10, points, crossing: met });
    const [interval] = styledAs(curve(crossing), "interval");
    const unit = (CURVE_SIZE.width - 74) / 10;
    expect(interval).toMatchObject({ d: `M${48 + 2 * unit} 204H${48 + 3 * unit}` });
    expect(styledAs(curve(undefined), "limit")).toEqual([]);
    expect(styledAs(curve(undefined), "curve")).toHaveLength(1);
  });
});
