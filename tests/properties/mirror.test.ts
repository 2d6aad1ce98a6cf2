/** A rig does not know its left from its right. */
import type { Rig } from "@secondline/rig";
import type { WhatIf } from "@secondline/scenarios";
import { partStrengths } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { demoRigs } from "../support/demoRigs.ts";
import { mirrorRig, mirrorWhatIf } from "../support/mirror.ts";
import { outcomeOf } from "../support/run.ts";

/** How far two runs that should agree may differ, as shares: of forces on walker and lines, and of the drop. */
interface Bounds {
  readonly leash: number;
  readonly lines: number;
  readonly drop: number;
}
/** A line alone is smooth: what remains is the mesh. */
const ALONE: Bounds = { leash: 0.01, lines: 0.01, drop: 0.005 };
/**
 * A slack backup in loops, and tapes that part, are sensitive to the last digit: each run is good to about 5 % of the pull on
 * the walker and 3 % of that on the lines in a fall, to 10 % in a catch, and two runs may err in opposite ways.
 */
const FALL: Bounds = { leash: 0.12, lines: 0.06, drop: 0.01 };
const CATCH: Bounds = { leash: 0.2, lines: 0.2, drop: 0.08 };

const near = (a: number, b: number, share: number) => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(share * Math.max(Math.abs(a), Math.abs(b), 100));
};

describe.each(demoRigs)("%s, mirrored", (_, rig: Rig) => {
  const mirrored = mirrorRig(rig);

  it("has the same strengths, at the other end", () => {
    const swapped = (id: string) => id.replace(/([AB])(?=\b|\.)/, (end) => (end === "A" ? "B" : "A"));
    const there = new Map(partStrengths(mirrored).map((part) => [part.id, part]));
    for (const part of partStrengths(rig)) {
      if (part.id.startsWith("connection.")) continue;
      expect(there.get(swapped(part.id))!.strength).toBeCloseTo(part.strength, 6);
    }
  });

  it("is back where it was when mirrored twice", () => {
    expect(mirrorRig(mirrored).main.sections.map((one) => one.stock.id)).toEqual(
      rig.main.sections.map((one) => one.stock.id),
    );
  });

  it("does in a leash fall what it did, without a backup to about a hundredth", () => {
    const { backup: _, ...alone } = rig;
    agree(alone, { kind: "leashFall", at: 0.3 }, ALONE);
  });

  it("does in a leash fall what it did, with its ends changed over", () => {
    agree(rig, { kind: "leashFall", at: 0.3 }, FALL);
  });

  it("does what it did when the main line fails at an end", () => {
    agree(rig, { kind: "mainFails", at: 0.4, cutAt: 1, walker: "hanging" }, CATCH);
  });
});

function agree(rig: Rig, whatIf: WhatIf, bounds: Bounds): void {
  const here = outcomeOf(rig, whatIf);
  const there = outcomeOf(mirrorRig(rig), mirrorWhatIf(whatIf));
  near(there.peaks.leash, here.peaks.leash, bounds.leash);
  near(there.drop, here.drop, bounds.drop);
  near(there.peaks.mainA, here.peaks.mainB, bounds.lines);
  near(there.peaks.mainB, here.peaks.mainA, bounds.lines);
  expect(there.caughtBy === "nothing").toBe(here.caughtBy === "nothing");
}
