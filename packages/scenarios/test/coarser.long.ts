/** Whether loads and drops come out the same, in the mean, where a run goes on on coarser meshes. */
import { readFileSync } from "node:fs";
import { Simulation } from "@secondline/engine";
import { readRig } from "@secondline/rig";
import { afterEach, describe, expect, it, vi } from "vitest";
import { executeRun, type GoodRun, rigStrengths, type WhatIf, whatIfKey } from "../src/index.ts";
import { Sampler, SEED } from "../src/scatter/sampler.ts";
import { finish } from "./finish.ts";

const DRAWS = 4;

function demo(name: string) {
  const text = readFileSync(new URL(`../../../demo-data/${name}.json`, import.meta.url), "utf8");
  const read = readRig(JSON.parse(text));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.rig;
}

/** Failures of the main line at both ends and in the middle, in every pose, from a few places. */
const EVENTS: readonly WhatIf[] = [0.15, 0.4, 0.5, 0.8].flatMap((at) =>
  [0, 0.3, 1].flatMap((cutAt) =>
    (["standing", "caught"] as const).map((walker) => ({ kind: "mainFails", at, cutAt, walker }) as const),
  ),
);

afterEach(() => vi.restoreAllMocks());

describe.each(["sound-rig", "old-rig", "loose-backup"])("runs of %s that go on on coarser meshes", (name) => {
  it("have the loads and drops of those that do not, in the mean", () => {
    const rig = demo(name);
    const strengths = rigStrengths(rig);
    const sampler = new Sampler(rig, { seed: SEED + 1 });
    const orders = EVENTS.flatMap((event) => sampler.draws(event, 0, DRAWS).map(({ draw }) => ({ event, draw })));
    const goOn = vi.spyOn(Simulation.prototype, "goOn");
    const runs = (): readonly GoodRun[] =>
      orders.map((order) => {
        const result = finish(executeRun(rig, strengths, { ...order, accuracy: "standard" }));
        if (!result.ok) throw new Error(`${whatIfKey(order.event)}: ${JSON.stringify(result.trouble)}`);
        return result;
      });
    const coarser = runs();
    const taken = goOn.mock.results.filter(({ value }) => value === true).length;
    expect(taken).toBeGreaterThan(0.5 * orders.length);
    goOn.mockReturnValue(false);
    const whole = runs();
    const ratios: number[] = [];
    const drops: number[] = [];
    for (const [i, one] of whole.entries()) {
      const other = coarser[i]!;
      drops.push(other.drop / one.drop - 1);
      const [loads, later] = [one.loads, other.loads] as Readonly<Record<string, number>>[];
      const largest = Math.max(...Object.values(loads!));
      for (const [id, load] of Object.entries(loads!)) {
        const now = later![id]!;
        if (Math.max(load, now) > 0.3 * largest && now !== load) ratios.push(Math.log(now / load));
      }
    }
    const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    const error = (values: readonly number[]) => Math.sqrt(mean(values.map((one) => one * one)) / values.length);
    // What changed at all, of loads that are at least 0.3 of the run's largest, and all drops.
    expect(Math.abs(mean(ratios))).toBeLessThan(0.02 + 2 * error(ratios));
    expect(Math.abs(mean(drops))).toBeLessThan(0.01 + 2 * error(drops));
  }, 600_000);
});
