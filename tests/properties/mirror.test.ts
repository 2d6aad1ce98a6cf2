/** A rig does not know its left from its right. */
import type { Rig } from "@secondline/rig";
import type { WhatIf } from "@secondline/scenarios";
import { partStrengths } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { demoRigs } from "../support/demoRigs.ts";
import { mirrorRig, mirrorWhatIf } from "../support/mirror.ts";
import { outcomeOf } from "../support/run.ts";

/** Tapes part in a fall and let the slack backup swing: the last per cent depends on a mesh not laid from both ends. */
const FALL = 0.025;
/** A slack line is sensitive to the least change; its catch less so. */
const CATCH = 0.06;

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

  it.each<[WhatIf, number]>([
    [{ kind: "leashFall", at: 0.3 }, FALL],
    [{ kind: "mainFails", at: 0.4, cutAt: 1, walker: "hanging" }, CATCH],
  ])("does in %o what it did, with its ends changed over", (whatIf, share) => {
    const here = outcomeOf(rig, whatIf);
    const there = outcomeOf(mirrored, mirrorWhatIf(whatIf));
    near(there.peaks.leash, here.peaks.leash, share);
    near(there.drop, here.drop, share);
    near(there.peaks.mainA, here.peaks.mainB, share);
    near(there.peaks.mainB, here.peaks.mainA, share);
    expect(there.caught).toBe(here.caught);
  });
});
