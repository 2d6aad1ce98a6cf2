import fc from "fast-check";
import { expect, it } from "vitest";
import { createLabel, type Label, layOutLabels } from "../src/scene/notes/labelLayout.ts";

const label = (values: Partial<Label>): Label => ({ ...createLabel(), active: true, height: 20, ...values });
const order = (labels: readonly Label[]) => Uint16Array.from(labels, (_, i) => i);
const boxOf = (l: Label) => ({
  left: l.left,
  top: l.top,
  right: l.left + (l.shown === 0 ? l.width : l.shortWidth),
  bottom: l.top + l.height,
});

const anyLabel = fc.record({
  x: fc.integer({ min: -50, max: 450 }),
  y: fc.integer({ min: -50, max: 350 }),
  width: fc.integer({ min: 10, max: 160 }),
  shortWidth: fc.integer({ min: 0, max: 60 }),
  priority: fc.integer({ min: 0, max: 100 }),
  clings: fc.boolean(),
  slot: fc.integer({ min: 0, max: 7 }),
});

it("labels never overlap each other or an obstacle, and never leave the picture", () => {
  fc.assert(
    fc.property(fc.array(anyLabel, { maxLength: 25 }), (values) => {
      const labels = values.map(label);
      const obstacle = { left: 10, top: 220, right: 200, bottom: 290 };
      layOutLabels(labels, order(labels), 400, 300, [obstacle]);
      const boxes = [obstacle, ...labels.filter((l) => l.shown !== -1).map(boxOf)];
      for (let i = 0; i < boxes.length; i++) {
        const a = boxes[i]!;
        expect(a.left >= 0 && a.top >= 0 && a.right <= 400 && a.bottom <= 300).toBe(true);
        for (const b of boxes.slice(i + 1)) {
          expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).toBe(true);
        }
      }
    }),
    { seed: 7, numRuns: 300 },
  );
});

it("the more important of two labels at one point keeps its long text", () => {
  const labels = [label({ x: 100, y: 50, width: 90, priority: 1 }), label({ x: 100, y: 50, width: 90, priority: 2 })];
  layOutLabels(labels, order(labels), 220, 100, []);
  expect(labels[1]!.shown).toBe(0);
  expect(labels[1]!.left).toBeGreaterThan(100);
});

it("without room for the long text the short one is shown, and without room for that none", () => {
  const short = label({ x: 30, y: 20, width: 200, shortWidth: 18 });
  layOutLabels([short], order([short]), 60, 40, []);
  expect(short.shown).toBe(1);
  const none = label({ x: 30, y: 20, width: 200, shortWidth: 0 });
  layOutLabels([none], order([none]), 60, 40, []);
  expect(none.shown).toBe(-1);
});

it("a label that clings stays at the rim when its point is outside; another vanishes", () => {
  const clinging = label({ x: -300, y: 40, width: 80, clings: true, priority: 2 });
  const plain = label({ x: -300, y: 80, width: 80 });
  layOutLabels([clinging, plain], order([clinging, plain]), 400, 300, []);
  expect(clinging.shown).toBe(0);
  expect(clinging.left).toBeGreaterThanOrEqual(0);
  expect(plain.shown).toBe(-1);
});

it("a label that may stand off its point goes around an obstacle, and one that may not is hidden", () => {
  const body = { left: 60, top: 20, right: 340, bottom: 280 };
  const near = label({ x: 200, y: 150, width: 50 });
  const off = label({ x: 200, y: 150, width: 50, farthest: 160 });
  layOutLabels([near], order([near]), 440, 300, [body]);
  layOutLabels([off], order([off]), 440, 300, [body]);
  expect(near.shown).toBe(-1);
  expect(off.shown).toBe(0);
  expect(off.left >= 340 || off.left + 50 <= 60 || off.top >= 280 || off.top + 20 <= 20).toBe(true);
});

it("a label with other points takes the first of them that has room", () => {
  const spots = Float64Array.from({ length: 16 }, (_, i) => [50, 40, 300, 40][i] ?? 0);
  const named = label({ width: 60, gap: 4, spots, spotCount: 2 });
  named.spotSides.fill(2);
  layOutLabels([named], order([named]), 400, 80, [{ left: 0, top: 0, right: 200, bottom: 80 }]);
  expect([named.shown, named.x]).toEqual([0, 300]);
});
