/** No part of a set, no mesh and no order of events says that a rig holds which the whole finds wanting. */
import { expect } from "vitest";
import { type Rig, rigStrengths, type WhatIf, whatIfSet } from "../src/index.ts";
import { searched } from "./madeUpRuns.ts";
import { chanceOf, randomLoads, randomRig } from "./randomRigs.ts";

const setOf = (rig: Rig): readonly WhatIf[] =>
  whatIfSet({ rig, weakPlaces: rigStrengths(rig).weakPlaces, size: "full" });

/** The verdict of the whole; throws where a part of it says more than may be known of it. */
export function checkPartial(seed: number): string {
  const rig = randomRig(seed);
  const made = randomLoads(seed);
  const whole = searched(rig, made).outcome;
  const set = setOf(rig);
  const shuffled = [...set].sort((a, b) => order(seed, a) - order(seed, b));
  const parts = [shuffled.slice(0, 1), shuffled.slice(0, Math.ceil(set.length / 2)), shuffled];
  for (const whatIfs of parts) {
    for (const accuracy of ["quick", "standard"] as const) {
      const { verdict, parts: rows } = searched(rig, made, { whatIfs, accuracy }).outcome;
      expect([seed, verdict]).not.toEqual([seed, "holds"]);
      expect(rows.map((row) => row.verdict)).not.toContain("holds");
    }
  }
  // A rig that fails in a quick look never holds as a whole: draws may make of a failing part a thin one, and no more than that.
  const quick = searched(rig, { ...made, first: true }, { size: "quick" }).outcome;
  expect(quick.firstToFail).toBe(quick.likelyFirst?.parts[0]?.id);
  expect(quick.verdict).not.toBe("holds");
  if (quick.verdict === "fails") expect(["fails", "thin"]).toContain(whole.verdict);
  if (whole.verdict === "holds") expect(whole.parts.every((row) => row.verdict === "holds")).toBe(true);
  return whole.verdict;
}

const order = (seed: number, whatIf: WhatIf) => chanceOf(`${seed} ${JSON.stringify(whatIf)}`);
