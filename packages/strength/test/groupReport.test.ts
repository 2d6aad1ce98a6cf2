import { GENERIC_STOCKS } from "@secondline/rig";
import type { Observation } from "@secondline/statistics";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { analyseBreakLog, type BreakTest } from "../src/index.ts";
import { groupReport } from "../src/logReport/groupReport.ts";
import { isOfStock } from "../src/retention/testState.ts";

const testOf = (result: Observation, given: Partial<BreakTest> = {}): BreakTest => ({
  part: "webbing",
  material: "polyester",
  state: "new",
  wet: false,
  outcome: "broke",
  result,
  ...given,
});
const broke = (...values: number[]) => values.map((value) => testOf({ kind: "exact", value }));
const report = (tests: BreakTest[]) => groupReport("group", "group", tests);
const doubts = (tests: BreakTest[]) => report(tests).doubts.map((doubt) => doubt.kind);

describe("few tests give a very cautious answer, not an error", () => {
  it("one test: about six tenths of it at 75 %, half at 95 %", () => {
    const { characteristic, doubts } = report(broke(20_000));
    expect(characteristic.at75.value / 20_000).toBeCloseTo(0.632, 3);
    expect(characteristic.at95.value / 20_000).toBeCloseTo(0.521, 3);
    expect(characteristic.at75.method).toContain("assumed");
    expect(doubts.map((d) => d.kind)).toEqual(["fewTests", "noFit"]);
  });

  it("two tests rise a little, and their own scatter counts when it is larger", () => {
    const even = report(broke(20_000, 20_100)).characteristic.at95.value;
    const wide = report(broke(12_000, 28_000)).characteristic.at95.value;
    expect(even).toBeGreaterThan(report(broke(20_000)).characteristic.at95.value);
    expect(wide).toBeLessThan(0.5 * even);
  });

  it("survivors alone count as broken where they stopped", () => {
    const survivors = [20_000, 20_000].map((value) => testOf({ kind: "above", value }));
    const found = report(survivors);
    expect(found.characteristic.at75.value).toBeGreaterThan(0);
    expect(found.characteristic.at75.value).toBeLessThan(20_000 * 0.7);
    expect(found.failures.map((f) => f.reason)[0]).toContain("at least two different breaking loads");
  });

  it("equal results fit nothing, and are no proof that nothing scatters", () => {
    const found = report(broke(20_000, 20_000, 20_000, 20_000, 20_000));
    expect(found.families).toEqual([]);
    expect(found.characteristic.at75.value).toBeLessThan(0.75 * 20_000);
    expect(found.characteristic.at75.method).toContain("all broke at one load");
    expect(found.en1990).toBeUndefined();
  });
});

describe("doubts are shown before the numbers", () => {
  it("points out an outlier and keeps it", () => {
    const values = [28_000, 28_200, 27_900, 28_100, 28_050, 27_950, 28_000, 12_000];
    expect(doubts(broke(...values))).toContain("outlier");
    expect(report(broke(...values)).mean).toBeCloseTo(values.reduce((a, b) => a + b) / 8, 6);
  });

  it("asks whether rows that repeat others to the letter are pieces of their own: twice the log is no more tests", () => {
    const log = broke(28_000, 29_000, 30_000, 31_000, 32_000).map((test, i) => ({ ...test, line: i + 2 }));
    const twice = [...log, ...log.map((test) => ({ ...test, line: test.line + 5 }))];
    expect(doubts(log)).not.toContain("copies");
    expect(report(twice).doubts.find(({ kind }) => kind === "copies")!.message.values).toEqual({ count: 5, of: 10 });
    // Another day is another piece, and a machine stops at the same load again and again.
    expect(doubts([...log, ...log.map((test) => ({ ...test, date: "2026-07-02" }))])).not.toContain("copies");
    const stopped = Array.from({ length: 4 }, () => testOf({ kind: "above", value: 30_000 }));
    expect(doubts([...log, ...stopped])).not.toContain("copies");
  });

  it("takes a name for the same however it is capitalised and spaced, in groups and batches", () => {
    const named = (state: string, batch: string) => ({ ...broke(30_000)[0]!, state, batch });
    const log = [named("New", "Roll 1"), named("new ", "roll 1"), named("NEW", "Roll  1"), named("14 months", "")];
    const { groups } = analyseBreakLog(log);
    expect(groups.map(({ tests }) => tests.length)).toEqual([3, 1]);
    expect(groups[0]!.label).toContain("New");
    expect(doubts(log.slice(0, 3))).toContain("batchesUnseen");
    const { material } = log[0]!;
    const shouted = log.map((test) => ({ ...test, material: ` ${material.toUpperCase()}` }));
    expect(analyseBreakLog([...log, ...shouted]).groups.map(({ tests }) => tests.length)).toEqual([6, 2]);
    const [stock] = GENERIC_STOCKS.values();
    for (const name of [stock!.id, stock!.name.toUpperCase(), `${stock!.name}  `]) {
      expect(isOfStock({ ...log[0]!, material: name }, stock!)).toBe(true);
    }
    expect(isOfStock(log[0]!, stock!)).toBe(false);
  });

  it("tells batches that differ, and batches too small to compare", () => {
    const batch = (name: string, ...values: number[]) => broke(...values).map((t) => ({ ...t, batch: name }));
    const far = [...batch("1", 30_000, 30_200, 30_400, 30_100), ...batch("2", 20_000, 20_300, 20_100, 20_200)];
    expect(doubts(far)).toContain("batches");
    expect(doubts([...batch("1", 30_000, 30_200), ...batch("2", 20_000)])).toContain("batchesUnchecked");
  });
});

it("a censored result is worth more than no result, and less than a broken one", () => {
  const values = [19_000, 20_500, 21_000, 22_000, 20_000, 19_500, 21_500, 20_200, 20_800, 21_200];
  const bounds = (tests: BreakTest[]) => report(tests).families.find((f) => f.fit.family === "lognormal")!.median;
  const censored = bounds([...broke(...values), ...[22_000, 22_000].map((value) => testOf({ kind: "above", value }))]);
  expect(censored[1]).toBeGreaterThan(bounds(broke(...values))[1]);
  expect(censored[1]).toBeGreaterThan(bounds(broke(...values, 22_000, 22_000))[1]);
});

it("says what more tests would bring: each gains less, and none passes the best guess", () => {
  const { narrowing, characteristic } = report(broke(19_000, 20_500, 21_000, 22_000, 20_000));
  const values = narrowing.map((n) => n.value);
  expect(values).toEqual([...values].sort((a, b) => a - b));
  expect(narrowing[0]!.value).toBeGreaterThan(characteristic.at75.value);
  expect(narrowing.at(-1)!.more).toBe(Number.POSITIVE_INFINITY);
});

it("gives a finite, positive answer for any mixture of results, lower with more confidence", () => {
  const load = fc.integer({ min: 1000, max: 60_000 });
  const observation: fc.Arbitrary<Observation> = fc.oneof(
    load.map((value) => ({ kind: "exact" as const, value })),
    load.map((value) => ({ kind: "above" as const, value })),
    load.map((value) => ({ kind: "below" as const, value })),
    load.map((from) => ({ kind: "between" as const, from, to: from + 500 })),
  );
  fc.assert(
    fc.property(fc.array(observation, { minLength: 1, maxLength: 12 }), (sample) => {
      const { at75, at95 } = report(sample.map((o) => testOf(o))).characteristic;
      expect(at95.value).toBeGreaterThan(0);
      expect(at95.value).toBeLessThanOrEqual(at75.value);
      expect(at75.value).toBeLessThan(60_500);
    }),
    { seed: 4, numRuns: 80 },
  );
});

it("groups by part, material, state and wetness, and names the test worth doing next", () => {
  const log = [...broke(20_000, 21_000, 22_000), ...broke(9000, 14_000, 11_000).map((t) => ({ ...t, state: "old" }))];
  const found = analyseBreakLog(log);
  expect(found.groups.map((g) => g.label)).toEqual(["webbing, polyester, new, dry", "webbing, polyester, old, dry"]);
  expect(found.testNext?.label).toBe("webbing, polyester, old, dry");
});
