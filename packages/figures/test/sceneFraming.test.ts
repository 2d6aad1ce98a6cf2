import fc from "fast-check";
import { expect, it } from "vitest";
import { fitFlat, zoomFlat } from "../src/scene/elevation/flatView.ts";
import { frameView, type Vec3, type View } from "../src/scene/shape/framing.ts";
import { gapSection } from "../src/scene/shape/gap.ts";
import {
  anchorView,
  comesDownLeft,
  eventPoints,
  eventView,
  FIELD_OF_VIEW,
  LEGEND_FOOT,
  overviewPoints,
  overviewView,
} from "../src/scene/shape/viewPoints.ts";
import { syntheticRecording, syntheticRig } from "./syntheticRecording.ts";

const margins = { left: 0.1, right: 0.14, top: 0.09, bottom: 0.12 };
const recording = syntheticRecording();
const rig = syntheticRig();
const gap = gapSection(rig.ground, rig.span, rig.rise);

/** Place in the picture, 0..1 from the left and from the top; undefined behind the camera. */
function seen(view: View, fovY: number, aspect: number, p: Vec3): readonly [number, number] | undefined {
  const f = unit(minus(view.target, view.position));
  const r = unit([f[1], -f[0], 0]);
  const u: Vec3 = [r[1] * f[2] - r[2] * f[1], r[2] * f[0] - r[0] * f[2], r[0] * f[1] - r[1] * f[0]];
  const d = minus(p, view.position);
  const depth = dot(d, f);
  if (depth <= 0) return undefined;
  const tan = Math.tan(fovY / 2);
  return [0.5 + dot(d, r) / depth / tan / aspect / 2, 0.5 - dot(d, u) / depth / tan / 2];
}
const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const unit = (a: Vec3): Vec3 => [a[0] / Math.hypot(...a), a[1] / Math.hypot(...a), a[2] / Math.hypot(...a)];

function expectInside(view: View, points: ArrayLike<number>, aspect: number, m: typeof margins): void {
  for (let i = 0; i < points.length; i += 3) {
    const at = seen(view, FIELD_OF_VIEW, aspect, [points[i]!, points[i + 1]!, points[i + 2]!]);
    expect(at).toBeDefined();
    expect(at![0]).toBeGreaterThan(m.left - 1e-3);
    expect(at![0]).toBeLessThan(1 - m.right + 1e-3);
    expect(at![1]).toBeGreaterThan(m.top - 1e-3);
    expect(at![1]).toBeLessThan(1 - m.bottom + 1e-3);
  }
}

it("a framed view holds every point inside its margins", () => {
  const coordinate = fc.float({ min: -80, max: 80, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(coordinate, coordinate, coordinate), { minLength: 2, maxLength: 12 }),
      fc.constantFrom(0.5, 1, 1.6, 2.4),
      (points, aspect) => {
        const flat = points.flat();
        expectInside(frameView(flat, [0.3, 1, -0.25], FIELD_OF_VIEW, aspect, margins), flat, aspect, margins);
      },
    ),
    { seed: 11, numRuns: 200 },
  );
});

it.each([0.55, 0.93, 1.6])("nothing of the event leaves the event camera's picture, aspect %f", (aspect) => {
  expectInside(eventView(recording, aspect, margins), eventPoints(recording), aspect, margins);
});

it.each([0.55, 0.93, 1.6])("the overview shows both anchors, aspect %f", (aspect) => {
  expectInside(overviewView(recording, gap, aspect, margins), overviewPoints(recording, gap), aspect, margins);
});

it("the elevation holds the whole rig, or the event, in its picture", () => {
  for (const [width, height] of [
    [1440, 900],
    [390, 420],
  ] as const) {
    const view = { x: 0, z: 0, scale: 1 };
    fitFlat(view, recording, gap, "rig", width, height);
    for (const x of [0, rig.span]) {
      const px = width / 2 + (x - view.x) * view.scale;
      expect(px).toBeGreaterThan(0);
      expect(px).toBeLessThan(width);
    }
    fitFlat(view, recording, gap, "event", width, height);
    const points = eventPoints(recording);
    for (let i = 0; i < points.length; i += 3) {
      expect(Math.abs(points[i]! - view.x) * view.scale).toBeLessThan(width / 2);
      expect(Math.abs(points[i + 2]! - view.z) * view.scale).toBeLessThan(height / 2);
    }
  }
});

it("a walker who comes down on the left of the elevation hangs above the legend", () => {
  const { frames } = recording;
  const stride = (frames.mainNodes + frames.backupNodes + 2) * 3;
  // The same fall, while the walker and the ring slide 10 m towards anchor A.
  const positions = frames.positions.slice();
  for (let f = 0; f < frames.count; f++)
    for (const at of [(f + 1) * stride - 6, (f + 1) * stride - 3]) positions[at]! -= (10 * f) / frames.count;
  const slid = { ...recording, frames: { ...frames, positions } };
  expect(comesDownLeft(eventPoints(recording))).toBe(false);
  expect(comesDownLeft(eventPoints(slid))).toBe(true);
  const [width, height] = [970, 450];
  const view = { x: 0, z: 0, scale: 1 };
  fitFlat(view, slid, gap, "event", width, height);
  const points = eventPoints(slid);
  for (let i = 0; i < points.length; i += 3)
    expect(height / 2 - (points[i + 2]! - view.z) * view.scale).toBeLessThan(height - LEGEND_FOOT + 1);
});

it("zooming the elevation leaves the point under the finger where it is", () => {
  const view = { x: 30, z: -5, scale: 20 };
  const worldX = view.x + (100 - 200) / view.scale;
  zoomFlat(view, 1.7, 100, 80, 400, 300);
  expect(view.x + (100 - 200) / view.scale).toBeCloseTo(worldX, 9);
});

it("from the anchor, the walker's lowest point shows over the edge, and so does the anchor", () => {
  const view = anchorView(recording, gap);
  const points = eventPoints(recording);
  let low = 0;
  for (let i = 3; i < points.length; i += 3) if (points[i + 2]! < points[low + 2]!) low = i;
  const lowest: Vec3 = [points[low]!, points[low + 1]!, points[low + 2]!];
  const share = -view.position[0] / (lowest[0] - view.position[0]);
  const overEdge = view.position[2] + share * (lowest[2] - view.position[2]);
  expect(overEdge).toBeGreaterThan(gap.edgeA);
  const anchors: readonly Vec3[] = [lowest, [0, 0, 0], [gap.span, 0, gap.rise]];
  for (const point of anchors) {
    const at = seen(view, FIELD_OF_VIEW, 1.6, point)!;
    expect(at[0]).toBeGreaterThan(0);
    expect(at[0]).toBeLessThan(1);
    expect(at[1]).toBeGreaterThan(0);
    expect(at[1]).toBeLessThan(1);
  }
});
