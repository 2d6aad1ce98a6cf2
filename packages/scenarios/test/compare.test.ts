import { describe, expect, it } from "vitest";
import { compareLayouts } from "../src/index.ts";
import { searched } from "./madeUpRuns.ts";
import { testRig } from "./testRig.ts";

describe("layouts side by side", () => {
  const sound = searched(testRig).outcome;
  const failing = searched(testRig, {
    share: (id) => (id.startsWith("backup") ? 0 : 0.1),
    run: () => ({ caughtBy: "nothing", lostBecause: "ground", feetClearance: -1 }),
  }).outcome;
  const row = (id: string) => compareLayouts([sound, failing]).rows.find((one) => one.id === id)!;

  it("give no margin to a part that a lost walker never loaded: it is not the stronger for it", () => {
    expect(row("margin.backup").values).toEqual([expect.any(Number), undefined]);
    expect(row("margin.backup").verdicts).toEqual(["holds", "notLoaded"]);
    expect(row("margin.backup").spread).toBeUndefined();
  });

  it("are bounds where a walker is lost, and are set against nothing; what stands before every fall is not", () => {
    const lost = {
      ...sound,
      falls: { ...sound.falls, notCaught: [sound.whatIfs.findIndex((one) => one.class === "afterFailure")] },
    };
    const rows = compareLayouts([sound, lost]).rows;
    const holds = (id: string) => id.startsWith("standing") || id.endsWith(".expected");
    expect(rows.filter(({ id }) => !holds(id)).length).toBeGreaterThan(8);
    for (const { id, bounds, spread } of rows) {
      if (holds(id)) expect({ id, bounds, spread }).toEqual({ id, spread: expect.any(Number) });
      else expect({ id, bounds, spread }).toEqual({ id, bounds: [false, true] });
    }
  });

  it("tell the pull that draws tell with its interval", () => {
    const { values, intervals } = row("person");
    for (const [i, value] of values.entries()) {
      const [low, high] = intervals![i]!;
      expect(low).toBeLessThanOrEqual(value!);
      expect(high).toBeGreaterThanOrEqual(value!);
    }
  });

  it("have finite numbers or none", () => {
    for (const { values } of compareLayouts([sound, failing]).rows) {
      for (const value of values) expect(value === undefined || Number.isFinite(value)).toBe(true);
    }
  });

  it("are two to four", () => {
    expect(() => compareLayouts([sound])).toThrow(/two|2 to 4/);
    expect(() => compareLayouts(Array(5).fill(sound))).toThrow(/2 to 4/);
  });
});
