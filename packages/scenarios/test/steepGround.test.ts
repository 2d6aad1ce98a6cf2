import { highestGround } from "@secondline/rig";
import { expect, it } from "vitest";
import { executeRun, NO_DRAW, rigStrengths, Sampler, type WhatIf } from "../src/index.ts";
import type { EventRuns } from "../src/rule/demand.ts";
import { fallFacts } from "../src/rule/fall.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const event: WhatIf = { kind: "leashFall", at: 0.1 };
/** A cliff that falls away just under the walker's place, towards the middle. */
const edge = 0.1 * testRig.span - 0.3;
const rig = {
  ...testRig,
  ground: [[0, -8] as const, [edge, -8] as const, [edge + 0.2, -60] as const, [testRig.span, -60] as const],
};

function heightIn(runs: EventRuns["runs"], deviates: EventRuns["deviates"]): number {
  return fallFacts([{ index: 0, event, runs, deviates }], true).leastFeet!.height;
}

const made = (draw: typeof NO_DRAW) => {
  const run = finish(executeRun(rig, rigStrengths(rig), { event, draw, accuracy: "quick" }));
  if (!run.ok) throw new Error("no run");
  return run;
};

it("a single fall beside a cliff's edge tells no more height than draws of it have", () => {
  const alone = made(NO_DRAW);
  const draws = new Sampler(rig, { seed: 7 }).draws(event, 0, 24);
  const drawn = draws.map(({ draw }) => made(draw));
  expect(alone.feetClearance).toBeGreaterThan(40);
  const least = Math.min(...drawn.map(({ feetClearance }) => feetClearance!));
  expect(least).toBeLessThan(10);
  expect(heightIn([alone], [[]])).toBeLessThan(least + 0.5);
  expect(
    heightIn(
      drawn,
      draws.map(({ deviates }) => deviates),
    ),
  ).toBeLessThan(least + 0.5);
});

it("the highest ground between two places is at either of them or at a corner between", () => {
  const ground = [[0, 0] as const, [10, 5] as const, [20, -5] as const];
  expect(highestGround({ ground }, 8, 12)).toBe(5);
  expect(highestGround({ ground }, 12, 14)).toBeCloseTo(3, 12);
  expect(highestGround({ ground }, -3, 2)).toBeCloseTo(1, 12);
});
