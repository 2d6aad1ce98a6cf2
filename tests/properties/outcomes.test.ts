/** What must be true of every outcome of every demo rig, whatever the numbers are. */
import type { Rig } from "@secondline/rig";
import { CAUTIONS, type Outcome } from "@secondline/scenarios";
import { beforeAll, describe, expect, it } from "vitest";
import { demoRigs } from "../support/demoRigs.ts";
import { studyOf } from "../support/run.ts";

const WORSE = ["holds", "thin", "fails"];

describe.each(demoRigs)("%s", (_, rig: Rig) => {
  let outcome: Outcome;
  beforeAll(() => {
    outcome = studyOf(rig, { accuracy: "quick", size: "quick" });
  });

  it("is computed whole", () => {
    expect(outcome.incomplete).toEqual([]);
    for (const one of outcome.whatIfs) expect(one.problem).toBeUndefined();
  });

  it("gives every part a margin that is its strength over its load, and points to the what-if", () => {
    for (const part of outcome.parts) {
      expect(part.margin).toBeCloseTo(part.strength / part.load, 9);
      expect(part.strength5).toBeLessThan(part.strength);
      expect(part.strength).toBeLessThanOrEqual(part.rated);
      expect(outcome.whatIfs[part.whatIf]).toBeDefined();
      expect(part.bases.length).toBeGreaterThan(0);
    }
  });

  it("names as first to fail a part than which none has less margin", () => {
    const first = outcome.parts.find((part) => part.id === outcome.firstToFail)!;
    expect(first.margin).toBe(Math.min(...outcome.parts.map((part) => part.margin)));
  });

  it("is never better than its worst part", () => {
    const worst = Math.max(...outcome.parts.map((part) => WORSE.indexOf(part.verdict)));
    expect(WORSE.indexOf(outcome.verdict)).toBeGreaterThanOrEqual(worst);
  });

  it("carries the cautions, says that it is invented, and what it rests on", () => {
    expect(outcome.cautions).toEqual(expect.arrayContaining([...CAUTIONS]));
    expect(outcome.cautions.join(" ")).toContain("every number of this rig is invented");
    expect(outcome.weakestBases.length).toBeGreaterThan(0);
  });

  it("loads an anchor with no less than either line and no more than both", () => {
    for (const end of ["A", "B"] as const) {
      const hardware = outcome.parts.find((part) => part.id === `anchor${end}.hardware.0`)!;
      const { peaks } = outcome.whatIfs[hardware.whatIf]!;
      const [main, backup] = [peaks![`main${end}`], peaks![`backup${end}`]];
      expect(hardware.load).toBeGreaterThanOrEqual(0.999 * Math.max(main, backup));
      expect(hardware.load).toBeLessThanOrEqual(1.001 * (main + backup));
    }
  });

  it("is the same when it is computed again", () => {
    expect(studyOf(rig, { accuracy: "quick", size: "quick" })).toEqual(outcome);
  });
});
