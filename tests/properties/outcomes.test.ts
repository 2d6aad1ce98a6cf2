/** What must be true of every outcome of every demo rig, whatever the numbers are. */
import type { Rig } from "@secondline/rig";
import type { Outcome } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { beforeAll, describe, expect, it } from "vitest";
import { demoRigs } from "../support/demoRigs.ts";
import { studyOf } from "../support/run.ts";

const WORSE = ["holds", "notLoaded", "open", "thin", "fails"];

describe.each(demoRigs)("%s", (_, rig: Rig) => {
  let outcome: Outcome;
  beforeAll(() => {
    outcome = studyOf(rig, { accuracy: "quick", size: "quick" });
  });
  const classes = () => outcome.parts.flatMap((part) => Object.values(part.byClass).map((one) => ({ part, one })));

  it("is computed, and says how much of it is not", () => {
    for (const one of outcome.whatIfs) expect(one.trouble).toBeUndefined();
    expect(outcome.search.complete).toBe(false);
    expect(outcome.search.gaps.map(({ kind }) => kind)).toEqual(["events", "coarse", "draws"]);
  });

  it("gives every loaded part a margin of E over R, and points to the what-if", () => {
    expect(classes().length).toBeGreaterThan(10);
    for (const { one } of classes()) {
      expect(one.margin).toBeCloseTo(one.strength5 / one.demand, 9);
      expect(one.demand).toBeGreaterThan(one.middle);
      expect(one.demandInterval[0]).toBeLessThan(one.demand);
      expect(one.demandInterval[1]).toBeGreaterThan(one.demand);
      expect(one.strength5).toBeLessThan(one.strength);
      expect(outcome.whatIfs[one.whatIf]).toBeDefined();
    }
    for (const part of outcome.parts) {
      expect(part.strength).toBeLessThanOrEqual(part.rated);
      expect(part.bases.length).toBeGreaterThan(0);
    }
  });

  it("names as least margin the part with the least share of what is required, failing ones first", () => {
    const least = outcome.parts.find((part) => part.id === outcome.leastMargin)!;
    const failing = classes().filter(({ one }) => one.margin < 1);
    // What fails is compared by how far it falls short of its load, the rest by the share of what is required.
    const among = failing.length > 0 ? failing : classes();
    const share = ({ margin, required }: { readonly margin: number; readonly required: number }) =>
      failing.length > 0 ? margin : margin / required;
    expect(share(least.byClass[least.governing!]!)).toBe(Math.min(...among.map(({ one }) => share(one))));
  });

  it("is never better than its worst part", () => {
    const worst = Math.max(...outcome.parts.map((part) => WORSE.indexOf(part.verdict)));
    expect(WORSE.indexOf(outcome.verdict)).toBeGreaterThanOrEqual(worst);
  });

  it("never says that it holds, or that a part holds, of a part of the search", () => {
    expect(outcome.verdict).not.toBe("holds");
    for (const part of outcome.parts) expect(part.verdict).not.toBe("holds");
    expect(words.verdict(rig, outcome)).not.toMatch(/^Holds/);
  });

  it("says of a part without a load that it was not loaded, and gives it no margin", () => {
    for (const part of outcome.parts) {
      expect(part.verdict === "notLoaded").toBe(Object.keys(part.byClass).length === 0);
      if (part.verdict === "notLoaded") expect(words.partRow(rig, part).margin).toBe("–");
    }
    expect(JSON.stringify(outcome)).not.toContain("null");
  });

  it("carries the cautions, says that it is invented, and what it rests on", () => {
    const said = words.cautions(rig, outcome.cautions);
    expect(said).toEqual(expect.arrayContaining([...words.generalCautions()]));
    expect(said.join(" ")).toContain("every number of this rig is invented");
    expect(outcome.weakestBases.length).toBeGreaterThan(0);
  });

  it("names the parts of which there is one only as single points of failure", () => {
    const single = outcome.singles.filter((one) => one.single).map(({ part }) => part);
    expect(single).toEqual(expect.arrayContaining(["harness", "leash"]));
    expect(words.singles(rig, outcome)).toContain("leash");
  });

  it("loads an anchor with no less than either line and no more than both", () => {
    for (const end of ["A", "B"] as const) {
      const hardware = outcome.parts.find((part) => part.id === `anchor${end}.hardware.0`)!;
      const { whatIf, load } = hardware.byClass[hardware.governing!]!;
      const { peaks } = outcome.whatIfs[whatIf]!;
      const [main, backup] = [peaks![`main${end}`], peaks![`backup${end}`]];
      expect(load).toBeGreaterThanOrEqual(0.999 * Math.max(main, backup));
      expect(load).toBeLessThanOrEqual(1.001 * (main + backup));
    }
  });
});

it("is the same when it is computed again", () => {
  const [, rig] = demoRigs[0]!;
  const options = { accuracy: "quick", whatIfs: [{ kind: "leashFall", at: 0.3 }] } as const;
  expect(studyOf(rig, options)).toEqual(studyOf(rig, options));
});
