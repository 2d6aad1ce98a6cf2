/** Hands on drawings, and what the scene asks of its shapes at a size or a moment. */
import { describe, expect, it } from "vitest";
import { PALETTES } from "../src/index.ts";
import { FlatHand } from "../src/scene/elevation/flatHand.ts";
import { coveredEdges, type FlatView, isSameView } from "../src/scene/elevation/flatView.ts";
import { lineHeight } from "../src/scene/lineHeight.ts";
import { createLegs } from "../src/scene/shape/anchorLegs.ts";
import { gapSection } from "../src/scene/shape/gap.ts";
import { sceneView } from "../src/scene/shape/sceneView.ts";
import { energyStack } from "../src/time/energyBands.ts";
import { energyDrawing } from "../src/time/energyDrawing.ts";
import { RangeHand, type RangeTarget } from "../src/time/rangeGestures.ts";
import { syntheticRecording, syntheticRig } from "./syntheticRecording.ts";
import { timeRecording } from "./timeRecording.ts";

const recording = syntheticRecording();
const rig = syntheticRig();

describe("a hand along an axis", () => {
  function hand() {
    const seen: { range: RangeTarget["range"] } = { range: { from: 10, to: 20 } };
    const target = (): RangeTarget => ({
      range: seen.range,
      width: 100,
      whole: 50,
      onRange: (range) => {
        seen.range = range;
      },
    });
    return { seen, hand: new RangeHand(target) };
  }

  it("pans by a drag on empty paper, and leaves a drag that begins on a thing to that thing", () => {
    const { seen, hand: one } = hand();
    expect(one.down(1, 50, true)).toBe(true);
    expect(one.move(1, 30)).toBe(false);
    expect(seen.range).toEqual({ from: 12, to: 22 });
    one.up(1);
    expect(one.down(1, 50, false)).toBe(false);
    one.move(1, 0);
    expect(seen.range).toEqual({ from: 12, to: 22 });
  });

  it("zooms with two fingers about the point between them, and says that they move nothing else", () => {
    const { seen, hand: one } = hand();
    one.down(1, 25, false);
    one.down(2, 75, false);
    expect(one.move(2, 125)).toBe(true);
    expect(seen.range.to - seen.range.from).toBeCloseTo(5, 9);
    one.up(1);
    expect(one.move(2, 20)).toBe(false);
  });

  it("does nothing by a pointer that never came down", () => {
    const { seen, hand: one } = hand();
    expect(one.move(7, 20)).toBe(false);
    expect(seen.range).toEqual({ from: 10, to: 20 });
  });
});

describe("a hand on the elevation", () => {
  const moved = (act: (hand: FlatHand) => void): FlatView => {
    const view: FlatView = { x: 0, z: 0, scale: 10 };
    act(new FlatHand(view, () => ({ width: 400, height: 200 })));
    return view;
  };
  const before = moved(() => undefined);

  it("moves the picture with it, by drag and by arrow keys", () => {
    const dragged = moved((hand) => {
      hand.down(1, { x: 100, y: 100 });
      expect(hand.move(1, { x: 140, y: 100 })).toBe(true);
    });
    expect(dragged).toEqual(moved((hand) => void hand.key("ArrowLeft")));
    expect(isSameView(dragged, before)).toBe(false);
  });

  it("zooms by wheel, by keys and by two fingers, in and out by as much", () => {
    expect(moved((hand) => void hand.key("+")).scale).toBeCloseTo(12, 9);
    const there = moved((hand) => {
      hand.key("+");
      hand.key("-");
    });
    expect(there.scale).toBeCloseTo(before.scale, 9);
    expect(moved((hand) => hand.wheel(-100, { x: 200, y: 100 })).scale).toBeGreaterThan(10);
    const pinched = moved((hand) => {
      hand.down(1, { x: 150, y: 100 });
      hand.down(2, { x: 250, y: 100 });
      hand.move(2, { x: 350, y: 100 });
    });
    expect(pinched.scale).toBeCloseTo(20, 9);
  });

  it("leaves other keys, and pointers that it does not hold, alone", () => {
    const same = moved((hand) => {
      expect(hand.key("x")).toBe(false);
      expect(hand.move(1, { x: 1, y: 1 })).toBe(false);
      hand.down(1, { x: 0, y: 0 });
      hand.up(1);
      expect(hand.move(1, { x: 50, y: 50 })).toBe(false);
    });
    expect(isSameView(same, before)).toBe(true);
  });

  it("frames the rig clear of the covered edges of the picture", () => {
    const boxes = [
      { top: 0, bottom: 30 },
      { top: 10, bottom: 44 },
      { top: 170, bottom: 200 },
    ];
    expect(coveredEdges(boxes, 200)).toEqual({ top: 44, bottom: 30 });
    expect(coveredEdges([], 200)).toEqual({ top: 0, bottom: 0 });
  });
});

describe("the scene", () => {
  const stage = { recording, gap: gapSection(rig.ground, rig.span, rig.rise) };

  it("is seen from another place for every camera, and from no place that is none", () => {
    const views = (["event", "overview", "anchor"] as const).map((camera) => sceneView(stage, camera, 900, 600));
    expect(new Set(views.map(({ position }) => position.join())).size).toBe(3);
    for (const camera of ["event", "overview", "elevation", "anchor"] as const)
      for (const [width, height] of [
        [900, 600],
        [390, 500],
        [0, 0],
      ] as const) {
        const { position, target } = sceneView(stage, camera, width, Math.max(height, 1));
        expect([...position, ...target].every(Number.isFinite)).toBe(true);
      }
  });

  it("keeps more room on a phone, where its tools and legend lie over it", () => {
    const away = (width: number) => {
      const { position, target } = sceneView(stage, "overview", width, width);
      return Math.hypot(...position.map((at, i) => at - target[i]!));
    };
    expect(away(390)).toBeGreaterThan(0);
    expect(away(390)).not.toBeCloseTo(away(900), 3);
  });

  it("has the legs of an anchor from its rock points to the master point, and none that broke, from then on", () => {
    const rock = Float32Array.of(0, 0, 0, 0, 1, 0);
    const broke = { time: 1, kind: "break", part: "anchorA", at: 1 } as never;
    const { ribbon, update } = createLegs(rock, "A", [broke]);
    const master = Float32Array.of(2, 0.5, -1);
    const shown = (time: number) => {
      update(master, time);
      return [...ribbon.tension].map((tension) => Number.isFinite(tension));
    };
    expect(shown(0.5).every(Boolean)).toBe(true);
    const early = [...ribbon.position];
    shown(1);
    expect([...ribbon.position]).not.toEqual(early);
    expect(createLegs(rock, "B", [broke]).ribbon.position).toHaveLength(ribbon.position.length);
  });

  it("knows where the main line hangs between its ends, and nothing without a run", () => {
    const at = lineHeight(recording);
    expect(at(rig.span / 2)).toBeLessThan(at(0.01));
    expect(at(1e6)).toBeCloseTo(at(rig.span), 1);
    expect(lineHeight(undefined)(12)).toBe(0);
  });
});

it("energy is drawn as edges from the bottom up, every band between two of them in its own fill", () => {
  const stack = energyStack(timeRecording().energy);
  const { series, bands } = energyDrawing(stack, PALETTES.light, (kind, colour) => `${kind} ${colour}`);
  expect(series).toHaveLength(stack.bands.length + 1);
  expect(bands.map(({ series: edges }) => edges)).toEqual(stack.bands.map((_, i) => [i + 2, i + 1]));
  expect(bands.map(({ fill }) => fill.split(" ")[0])).toEqual(stack.bands.map(({ kind }) => kind));
});
