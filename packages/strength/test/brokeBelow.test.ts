/** Pieces of which a load is known below which they broke: a worse result raises no strength, and one that says nothing changes none. */
import { describe, expect, it } from "vitest";
import type { BreakTest } from "../src/index.ts";
import { characteristicValues } from "../src/logReport/characteristic.ts";
import { beyondBound } from "../src/retention/bounded.ts";
import { ROUNDING } from "./monotoneChecks.ts";
import { type History, held, largestRise } from "./randomHistories.ts";

const history: History = { months: 18, falls: 180, clamped: 14 };
const piece = (given: Partial<BreakTest>, value: number): BreakTest => ({
  part: "webbing",
  material: "pes",
  batch: "a",
  state: "used",
  wet: false,
  outcome: "broke",
  result: { kind: "exact", value },
  ...given,
});
/** About what the built-in factors leave of 30 kN. */
const PIECES = {
  new: piece({ state: "new", sunMonths: 0, falls: 0 }, 30_000),
  sun: piece({ sunMonths: 16 }, 21_000),
  falls: piece({ sunMonths: 16, falls: 150 }, 18_000),
  clamp: piece({ sunMonths: 16, state: "clamp mark", clampedMonths: 10 }, 14_000),
} as const;
const NAMES = ["new", "sun", "falls", "clamp"] as const;
const times = (test: BreakTest, by: number, kind: "exact" | "below"): BreakTest => {
  if (test.result.kind !== "exact") throw new Error("a piece of this test broke");
  const outcome = kind === "exact" ? "broke" : "broke below";
  return { ...test, outcome, result: { kind, value: by * test.result.value } };
};
const SHARES = [0.1, 0.3, 0.5, 0.7, 0.85, 0.95, 1, 1.05, 1.2, 1.5, 2, 3, 10] as const;

/** Largest rises from each log to the next worse one, the last being the worst. */
function riseAlong(logs: readonly (readonly BreakTest[])[]): readonly [number, number] {
  const all = logs.map((log) => held(history, log));
  const rises = all.slice(1).map((one, i) => largestRise(all[i]!, one));
  return [Math.max(...rises.map(([centre]) => centre)), Math.max(...rises.map(([, low]) => low))];
}
const expectNoRise = (logs: readonly (readonly BreakTest[])[], most = ROUNDING) => {
  const [centre, low] = riseAlong(logs);
  expect(centre).toBeLessThan(most);
  expect(low).toBeLessThan(most);
};
/** Without a test nothing is laid out on a grid of doses; between its nodes it is off by less than this [-]. */
const GRID = 1e-5;
const downward = [...SHARES].reverse();

describe("the lower the load below which a piece broke, the less is held, in the centre and in the 5 % value", () => {
  it.each(NAMES)("with a piece '%s' alone, and never more than without a test", (name) => {
    const logs = downward.map((by) => [times(PIECES[name], by, "below")]);
    expectNoRise(logs);
    expectNoRise([[], logs[0]!], GRID);
  });

  it.each(NAMES)("with a piece '%s' beside one break of every state", (name) => {
    const broke = NAMES.map((one) => times(PIECES[one], 1, "exact"));
    expectNoRise([broke, ...downward.map((by) => [...broke, times(PIECES[name], by, "below")])]);
  });

  it.each(NAMES)("with a piece '%s' beside four breaks of its own state", (name) => {
    const broke = [0.94, 1.01, 1.03, 0.99].map((by) => times(PIECES[name], by, "exact"));
    expectNoRise([broke, ...downward.map((by) => [...broke, times(PIECES[name], by, "below")])]);
  });

  it("with all pieces at once", () => {
    const logs = downward.map((by) => NAMES.map((name) => times(PIECES[name], by, "below")));
    expectNoRise(logs);
    expectNoRise([[], logs[0]!], GRID);
  });
});

describe("a lower break raises nothing", () => {
  it.each(NAMES)("when the piece '%s' is the only one", (name) => {
    expectNoRise(downward.map((by) => [times(PIECES[name], by, "exact")]));
  });
});

describe("a piece that broke below a load that it could not reach", () => {
  const all = (log: readonly BreakTest[]) => held(history, log);

  it.each(NAMES)("changes nothing when it is the only one: '%s'", (name) => {
    const before = all([]);
    all([times(PIECES[name], 10, "below")]).forEach((one, i) => {
      expect(one.strength5 / before[i]!.strength5).toBeLessThan(1 + GRID);
      expect(one.strength5 / before[i]!.strength5).toBeGreaterThan(0.999);
    });
  });

  it.each(NAMES)("changes nothing beside breaks of every state: '%s'", (name) => {
    const broke = NAMES.map((one) => times(PIECES[one], 1, "exact"));
    const before = all(broke);
    all([...broke, times(PIECES[name], 10, "below")]).forEach((one, i) => {
      expect(one.strength5 / before[i]!.strength5).toBeLessThan(1 + ROUNDING);
      expect(one.strength5 / before[i]!.strength5).toBeGreaterThan(0.99);
    });
  });
});

it("a new piece that broke below half of its rating takes at least as much off as the load says", () => {
  const before = held(history, []);
  held(history, [times(PIECES.new, 0.5, "below")]).forEach((one, i) => {
    if (!one.id.startsWith("main")) return;
    expect(one.strength / before[i]!.strength).toBeLessThan(0.55);
  });
});

it("the value to be expected below a load falls with the load, far out as well", () => {
  const means = [2, 0, -4, -6, -7, -7.5, -7.9, -7.99, -8.01, -9, -20].map(
    (z) => beyondBound({ ...PIECES.new, result: { kind: "below", value: Math.exp(0.05 * z) } }, 0, 0.05, 0).mean / 0.05,
  );
  means.slice(1).forEach((mean, i) => {
    expect(mean).toBeLessThan(means[i]!);
  });
  // −φ(z)/Φ(z) at −7.9.
  expect(means[6]).toBeCloseTo(-8.0229, 3);
});

describe("the bound of a group of like tests", () => {
  const exact = [30, 29.5, 30.4, 31, 29.1].map((kN) => ({ kind: "exact", value: 1000 * kN }) as const);
  const valuesWith = (count: number, ...below: readonly number[]) =>
    characteristicValues(
      [...exact.slice(0, count), ...below.map((kN) => ({ kind: "below", value: 1000 * kN }) as const)],
      [0.75, 0.95],
    ).map(({ value }) => value);
  const expectFalling = (rows: readonly (readonly number[])[]) => {
    rows.slice(1).forEach((row, i) => {
      row.forEach((value, k) => {
        expect(value).toBeLessThan(rows[i]![k]! * (1 + ROUNDING));
      });
    });
  };
  const loads = [200, 93, 50, 40, 33, 31, 30.9, 30.5, 30, 29.6, 29, 28, 25, 20, 15, 5] as const;

  it.each([1, 2, 3, 5])("of %i that broke falls with a load below which another one broke", (count) => {
    expectFalling([valuesWith(count), ...loads.map((load) => valuesWith(count, load))]);
    expectFalling([valuesWith(count, 27), ...loads.map((load) => valuesWith(count, 27, load))]);
    expect(valuesWith(count, 93)).toEqual(valuesWith(count));
  });

  it("of none that broke at a known load falls with them too", () => {
    expectFalling(loads.map((load) => valuesWith(0, load, 30)));
  });
});
