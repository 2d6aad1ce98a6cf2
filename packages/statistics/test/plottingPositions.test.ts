import { expect, it } from "vitest";
import { exactly, plottingPositions } from "../src/index.ts";

it("stands at i ÷ (n + 1) in a complete sample, in whatever order it was written", () => {
  expect(plottingPositions(exactly([3, 1, 2]))).toEqual([0.75, 0.25, 0.5].map((x) => expect.closeTo(x, 12)));
});

it("gives breaks after a survivor the room that the survivor leaves open", () => {
  // Reverse ranks 4, 3, 2, 1; the survivor is the second: 1/5, then 1 − 4/5 · 2/3, then 1 − 4/5 · 2/3 · 1/2.
  const sample = [...exactly([1, 3, 4]), { kind: "above", value: 2 } as const];
  expect(plottingPositions(sample)).toEqual([1 / 5, 7 / 15, 11 / 15, 1 / 5].map((x) => expect.closeTo(x, 12)));
});

it("counts a survivor after breaks at the same load, and no survivor as broken", () => {
  const sample = [{ kind: "above", value: 2 } as const, ...exactly([2])];
  expect(plottingPositions(sample)).toEqual([1 / 3, 1 / 3].map((x) => expect.closeTo(x, 12)));
  expect(plottingPositions([{ kind: "above", value: 2 }])).toEqual([0]);
});
