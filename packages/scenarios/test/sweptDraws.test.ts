/** What the draws of a sweep's points say beside the curve through all of them. */
import { seededRandom } from "@secondline/statistics";
import { describe, expect, it } from "vitest";
import { lifted } from "../src/sweep/lift.ts";
import { document, knobOf, pointsOver, swept } from "./sweptRuns.ts";

const fall = { kind: "leashFall", at: 0.5 } as const;
const slack = knobOf("backup.slack=2%..14%");
const nine = pointsOver(["backup.slack=2%..14%"], 9);

/** Every so many falls are far harder than the others. */
const SELDOM = 12;

describe("a curve through draws", () => {
  it("keeps no clearance that more than 5 % of the draws do not keep", () => {
    const near = { ...(document as object), requiredClearance: "7.9 m" };
    const chance = seededRandom(6);
    let made = 0;
    const { limits, points } = swept(
      pointsOver(["connections=0..1"], 2, near),
      [knobOf("connections=0..1")],
      { what: { kind: "height" }, whatIfs: [fall] },
      () => ({ run: () => ({ drop: 16, feetClearance: (made++ % SELDOM === 5 ? 5 : 12) + 0.2 * chance.normal() }) }),
    );
    expect(limits.at(-1)).toMatchObject({ limit: { kind: "clearance", value: 7.9 }, throughout: { keeps: false } });
    for (const { curve, own } of points) expect(curve!.value).toBeLessThanOrEqual(own!.value);
  });

  it("is nowhere better than the draws of any point, and its band reaches as far as theirs", () => {
    const chance = seededRandom(3);
    let made = 0;
    const { points, line, limits } = swept(
      nine,
      [slack],
      { what: { kind: "load", part: "leash" }, whatIfs: [fall], limit: 8000 },
      () => ({
        run: () => ({ loads: { leash: 5000 * (made++ % SELDOM === 5 ? 2 : 1) * (1 + 0.03 * chance.normal()) } }),
      }),
    );
    const hard = points.filter(({ own }) => own!.value > 8000);
    expect(hard.length).toBeGreaterThan(1);
    for (const { values, curve, own } of points) {
      expect(curve!.value).toBeGreaterThanOrEqual(own!.value);
      expect(curve!.high).toBeGreaterThanOrEqual(curve!.value);
      expect(line!.find(({ at }) => at === values[0])!.value).toBe(curve!.value);
    }
    expect(limits[0]!.throughout?.keeps ?? false).toBe(false);
  });

  it("lifted, keeps nothing that it would not keep without, and its better end stays", () => {
    const [from, to, values] = [0, 4, [0, 1, 2, 3, 4]];
    const axis = { knob: { ...slack, from, to }, values };
    const curve = ([x]: readonly number[]) => ({ value: x!, low: x! - 1, high: x! + 1 });
    const own = new Map([1.2, 0.4, 2.9, 2, 5].map((value, i) => [i, { value, low: value - 2, high: value + 0.2 }]));
    const up = lifted({ axes: [axis], points: values.map((x) => ({ values: [x] })), own, curve });
    expect(values.map((x) => up([x])!.value)).toEqual([1.2, 1, 2.9, 3, 5]);
    expect(values.map((x) => up([x])!.high)).toEqual([2.2, 2, 3.9, 4, 6]);
    for (let x = 0; x <= 4; x += 0.1) {
      const [before, after] = [curve([x]), up([x])!];
      expect(after.low).toBe(before.low);
      expect(after.high).toBeGreaterThanOrEqual(before.high);
      expect(after.value).toBeGreaterThanOrEqual(before.value);
    }
    // Halfway between two points half of either lift.
    expect(up([1.5])!.value).toBeCloseTo(1.5 + 0.9 / 2, 12);
  });
});

describe("the outline on a map", () => {
  it("goes round no pair of values that may not keep the limit", () => {
    const asked = ["backup.slack=2%..14%", "walker.mass=60kg..120kg"];
    const found = pointsOver(asked, 5);
    const chance = seededRandom(4);
    const load = ([x, m]: readonly number[]) => 4000 * Math.exp(0.05 * (x! + (m! - 60) / 10));
    const { region, points } = swept(
      found,
      asked.map((one) => knobOf(one)),
      { what: { kind: "load", part: "leash" }, whatIfs: [fall], limit: load([10.4, 60]) },
      (_, values) => ({ run: () => ({ loads: { leash: load(values) * Math.exp(0.06 * chance.normal()) } }) }),
    );
    let inside = 0;
    points.forEach(({ values: [x, m] }, i) => {
      const row = region!.outline.find(({ at }) => at === m)!;
      const kept = row.kept.some(({ from, to }) => from <= x! && x! <= to);
      if (kept) inside++;
      expect(kept).toBe(region!.states[i] === "keeps");
    });
    expect(inside).toBeGreaterThan(2);
    expect(region!.states).toContain("open");
  });
});

describe("what a sweep counts and tells beside its curve", () => {
  const over = (run: object) =>
    swept(nine, [slack], { what: { kind: "margin" }, whatIfs: [fall] }, (_, [x]) => ({
      run: () => (x! > 8 ? run : {}),
    })).points.map(({ lost, ground }) => [lost, ground]);
  const quiet = Array.from({ length: 5 }, () => [0, 0]);

  it("is who falls with nothing to hold them, also where there is ground below", () => {
    const falling = over({ caughtBy: "nothing", lostBecause: "freeFall", feetClearance: -3 });
    expect(falling).toEqual([...quiet, ...Array.from({ length: 4 }, () => [8, 8])]);
    const high = over({ caughtBy: "nothing", lostBecause: "freeFall" });
    expect(high).toEqual([...quiet, ...Array.from({ length: 4 }, () => [8, 0])]);
    const caughtTooLow = over({ feetClearance: -0.1 });
    expect(caughtTooLow).toEqual([...quiet, ...Array.from({ length: 4 }, () => [0, 8])]);
  });

  it("is what somebody judged, and what somebody must look at", () => {
    const edited = JSON.parse(JSON.stringify(document));
    edited.main.endA.own = { factor: 1.5, reason: "looks as new" };
    // Nobody knows how many falls the middle has taken.
    delete edited.main.sections[0].wear;
    const found = pointsOver(["backup.slack=2%..14%"], 3, edited);
    const { besides } = swept(found, [slack], { what: { kind: "drop" }, whatIfs: [fall] }, () => ({}));
    expect(besides.judged).toMatchObject([
      { part: "endA", own: true, value: 1.5, reason: { code: "basis.own", values: { reason: "looks as new" } } },
    ]);
    expect(besides.withheld.length).toBeGreaterThan(0);
    for (const { points } of besides.withheld) expect(points).toEqual([0, 1, 2]);
    expect(besides.lapses).toEqual([]);
  });
});
