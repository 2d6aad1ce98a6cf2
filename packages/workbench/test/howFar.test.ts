import { readRig } from "@secondline/rig";
import {
  assessRig,
  type Crossing,
  type Knob,
  type LimitFound,
  type Swept,
  type SweptPoint,
} from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import demo from "../../../demo-data/sound-rig.json" with { type: "json" };
import {
  candidatesOf,
  documentAt,
  firstAsked,
  foretoldSweep,
  type HowFarAsked,
  howFarFields,
  readHowFar,
  sweepNumbers,
} from "../src/index.ts";

const reading = readRig(demo);
if (!reading.ok) throw new Error("the demo rig is none");
const { rig, document } = reading;
const context = { rig, document, known: {} };

const asked = (part: Partial<HowFarAsked> = {}): HowFarAsked => ({
  ...firstAsked(sweepNumbers(document, false)),
  ...part,
});
const slack = (from: string, to: string) => ({ name: "backup.slack", from, to });
const faultsOf = (part: Partial<HowFarAsked>) => {
  const found = readHowFar(asked(part), context);
  return found.ok ? [] : found.faults.map(({ place, fault }) => `${place}: ${fault.kind}`);
};

describe("numbers to sweep", () => {
  it("begin with those that are asked about most, each with a range around what the rig has", () => {
    const numbers = sweepNumbers(document, false);
    expect(numbers.slice(0, 6).map(({ name }) => name)).toEqual([
      "backup.slack",
      "connections",
      "main.pretension",
      "leash.length",
      "walker.mass",
      "span",
    ]);
    expect(numbers[0]).toMatchObject({ now: "5 %", from: "2.5 %", to: "15 %" });
    expect(numbers[1]).toMatchObject({ now: "3", from: "0", to: "6" });
    expect(numbers.some(({ name }) => /^required|^ground/.test(name))).toBe(false);
  });

  it("all give a range that can be asked about", () => {
    for (const { name, from, to } of sweepNumbers(document, false)) {
      const found = readHowFar(asked({ ranges: [{ name, from, to }] }), context);
      expect(found.ok ? [] : [name, found.faults]).toEqual([]);
    }
  });

  it("count months only from a day", () => {
    const names = (dated: boolean) => sweepNumbers(document, dated).map(({ name }) => name);
    expect(names(false)).not.toContain("months");
    expect(names(true)).toContain("months");
  });
});

describe("a question", () => {
  it("is read with the usual number of values, fewer at a first look", () => {
    const found = readHowFar(asked({ effort: "quick" }), context);
    expect(found.ok && found.question).toMatchObject({
      points: { counts: [7] },
      options: { size: "quick", accuracy: "quick", what: { kind: "margin" } },
    });
    const closely = readHowFar(
      asked({ effort: "full", ranges: [slack("2 %", "14 %"), { name: "connections", from: "0", to: "5" }] }),
      context,
    );
    expect(closely.ok && closely.question).toMatchObject({
      points: { counts: [6, 6] },
      options: { accuracy: "standard" },
    });
  });

  it("tells every fault at its place", () => {
    expect(faultsOf({ ranges: [slack("14 %", "2 %")] })).toEqual(["first: reversed"]);
    expect(faultsOf({ ranges: [slack("5 %", "5 %")] })).toEqual(["first: empty"]);
    expect(faultsOf({ ranges: [slack("", "5 %")] })).toEqual(["first: form"]);
    expect(faultsOf({ ranges: [slack("2 %", "14 kN")] })).toEqual(["first: value"]);
    expect(faultsOf({ ranges: [slack("2 %", "9 %"), slack("2 %", "9 %")] })).toEqual(["second: same"]);
    expect(
      faultsOf({ ranges: [{ name: "connections", from: "0.5", to: "3" }], points: "2000", limit: "much" }),
    ).toEqual(["first: whole", "points: points", "limit: limitNumber"]);
    expect(faultsOf({ what: { kind: "drop" }, limit: "3 kN" })).toEqual(["limit: limit"]);
  });

  it("tells a fault of a range beside the end that has it; of the whole range beside the first", () => {
    const at = (from: string, to: string) => {
      const question = asked({ ranges: [slack(from, to)] });
      const form = {
        asked: question,
        rig,
        numbers: sweepNumbers(document, false),
        reading: readHowFar(question, context),
      };
      const range = howFarFields(form).find((one) => one.kind === "range")!;
      return range.kind === "range" ? range.ends.map(({ messages }) => messages.length) : [];
    };
    expect(at("2 %", "14 %")).toEqual([0, 0]);
    for (const to of ["2 parsecs", "", "?"]) expect(at("2 %", to), to).toEqual([0, 1]);
    for (const from of ["2 parsecs", "", "?"]) expect(at(from, "14 %"), from).toEqual([1, 0]);
    expect(at("2", "2 parsecs")).toEqual([0, 1]);
    expect(at("5 %", "5 %")).toEqual([1, 0]);
  });

  it("is told how many runs it takes: more for more values, and longer with fewer jobs", () => {
    const foretold = (points: string, jobs: number) => {
      const found = readHowFar(asked({ points }), context);
      if (!found.ok) throw new Error("no question");
      return foretoldSweep(found.question, assessRig(rig), jobs);
    };
    expect(foretold("41", 1).runs).toBeGreaterThan(foretold("7", 1).runs);
    expect(foretold("7", 1).seconds).toBeCloseTo(2 * foretold("7", 2).seconds, 6);
  });
});

const knob: Knob = {
  kind: "field",
  name: "backup.slack",
  path: "backup.slack",
  dimension: "share",
  from: 2,
  to: 14,
  unit: "%",
  whole: false,
};
const governing = { event: { kind: "leashFall", at: 0.5 }, key: "fall@0.5" } as const;
const point = (value: number, low: number, high: number): SweptPoint => ({
  values: [value],
  change: {},
  curve: { value: (low + high) / 2, low, high, ...governing },
  runs: 8,
  failed: 0,
  lost: 0,
  ground: 0,
});
const limit = { kind: "required", value: 1 } as const;
const crossing = (part: Partial<Crossing>): Crossing => ({ limit, kept: "below", at: 9, governing, ...part });
const sweptWith = (found: Omit<LimitFound, "limit">, points: readonly SweptPoint[]): Swept =>
  ({ knobs: [knob], what: { kind: "margin" }, limits: [{ limit, ...found }], points }) as unknown as Swept;

describe("a value to check", () => {
  it("is the last one that keeps the limit with its whole band, rounded into the kept side", () => {
    const falling = sweptWith({ crossings: [crossing({ at: 9.44, low: 9.128, high: 9.9 })] }, [
      point(2, 1.2, 1.3),
      point(14, 0.7, 0.8),
    ]);
    expect(candidatesOf(falling)).toEqual([
      { value: 9.12, edge: "most", rangeEnds: false },
      { value: 2, edge: "least", rangeEnds: true },
    ]);
    const rising = sweptWith({ crossings: [crossing({ kept: "above", at: 4.4, low: 4, high: 4.751 })] }, [
      point(2, 0.7, 0.8),
      point(14, 1.2, 1.3),
    ]);
    expect(candidatesOf(rising)).toEqual([
      { value: 4.76, edge: "least", rangeEnds: false },
      { value: 14, edge: "most", rangeEnds: true },
    ]);
  });

  it("is none where the band never leaves the limit, or all of the range fails", () => {
    expect(
      candidatesOf(sweptWith({ crossings: [crossing({ at: 9 })] }, [point(2, 0.95, 1.3), point(14, 0.7, 0.8)])),
    ).toEqual([]);
    const throughout = { keeps: false, sure: true, worst: { value: 0.7, low: 0.6, high: 0.8, ...governing } };
    expect(candidatesOf(sweptWith({ crossings: [], throughout }, [point(2, 0.8, 0.9), point(14, 0.7, 0.8)]))).toEqual(
      [],
    );
  });

  it("is written into the document in the unit that was asked in", () => {
    expect(documentAt(document, [knob], [9.12])).toMatchObject({ backup: { slack: "9.12 %" } });
  });
});
