import { expect, it } from "vitest";
import { gapSection, groundAt } from "../src/scene/shape/gap.ts";
import { ridgeMesh } from "../src/scene/shape/ridges.ts";
import { terrainMesh, treePlaces } from "../src/scene/shape/terrain.ts";
import { syntheticRig } from "./syntheticRecording.ts";

const rig = syntheticRig();
const gap = gapSection(rig.ground, rig.span, rig.rise);
const terrain = terrainMesh(gap);
const row = (j: number) => terrain.position.subarray(3 * j * terrain.columns, 3 * (j + 1) * terrain.columns);

it("the rock passes through every point of the rig's ground profile under the line", () => {
  const middle = row(terrain.middleRow);
  for (const [x, z] of rig.ground) {
    let nearest = Infinity;
    for (let i = 0; i < middle.length; i += 3) {
      expect(middle[i + 1]).toBe(0);
      nearest = Math.min(nearest, Math.hypot(middle[i]! - x, middle[i + 2]! - z));
    }
    expect(nearest).toBeLessThan(1e-4);
  }
});

it("under the line the rock is the section and nothing else", () => {
  const middle = row(terrain.middleRow);
  for (let i = 0; i < middle.length; i += 3) {
    const x = middle[i]!;
    // Upright faces have two heights at one place; the gap's height there is the upper one.
    if (x > 0.01 && x < rig.span - 0.01) expect(middle[i + 2]).toBeCloseTo(groundAt(gap, x), 3);
  }
});

it("the same rig gives the same rock, and its numbers are finite", () => {
  const again = terrainMesh(gapSection(rig.ground, rig.span, rig.rise));
  expect(again.position).toEqual(terrain.position);
  expect(terrain.position.every(Number.isFinite)).toBe(true);
  for (let i = 0; i < terrain.normal.length; i += 3) {
    expect(Math.hypot(terrain.normal[i]!, terrain.normal[i + 1]!, terrain.normal[i + 2]!)).toBeCloseTo(1, 4);
  }
  expect(ridgeMesh(gap).position.every(Number.isFinite)).toBe(true);
});

it("rock reaches up to both anchors even where the profile ends far below", () => {
  const low = gapSection(
    [
      [0, -25],
      [30, -30],
    ],
    30,
    4,
  );
  expect(groundAt(low, -2)).toBeCloseTo(-0.3, 5);
  expect(groundAt(low, 32)).toBeCloseTo(3.7, 5);
  expect(groundAt(low, 15)).toBeCloseTo(-27.5, 5);
});

it("without a ground profile the floor is scenery and says so", () => {
  const none = gapSection([], 50, 0);
  expect(none.known).toBe(false);
  expect(terrainMesh(none).position.every(Number.isFinite)).toBe(true);
});

it("no tree stands under the line", () => {
  const trees = treePlaces(gap, terrain);
  expect(trees.length).toBeGreaterThan(0);
  for (let i = 0; i < trees.length; i += 4) expect(Math.abs(trees[i + 1]!)).toBeGreaterThan(5);
});

it("no tree stands before the eyes of who looks from anchor A", () => {
  for (const span of [25, 60, 140]) {
    for (const depth of [6, 30, 80]) {
      const profile = [[0, -1] as const, [span / 2, -depth] as const, [span, -1] as const];
      const section = gapSection(profile, span, 0);
      const trees = treePlaces(section, terrainMesh(section));
      for (let i = 0; i < trees.length; i += 4) {
        const [_x, y, z, height] = [trees[i]!, trees[i + 1]!, trees[i + 2]!, trees[i + 3]!];
        // Beside and behind the line to its right: only what lies below the edge.
        if (y < 6) expect(z + height).toBeLessThan(-1);
      }
    }
  }
});
