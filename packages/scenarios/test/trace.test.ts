import { describe, expect, it } from "vitest";
import { TRACE_LINES } from "../src/facts/trace.ts";
import type { RunOrder, Trace, TraceLine } from "../src/index.ts";
import { bandOf } from "../src/run/thinnedTrace.ts";
import { BLOCK_DRAWS } from "../src/scatter/sampler.ts";
import { searched } from "./madeUpRuns.ts";
import { testRig } from "./testRig.ts";

const BINS = 160;
/** Of every line the same: least and largest of each bin by its middle [s]. */
function traceOf(duration: number, ends: (time: number) => readonly [number, number]): Trace {
  const values = Array.from({ length: BINS }, (_, bin) => ends(((bin + 0.5) / BINS) * duration)).flat();
  const lines = Object.fromEntries(TRACE_LINES.map((line) => [line, values])) as Record<TraceLine, number[]>;
  return { duration, bins: BINS, ...lines };
}

describe("the band of draws", () => {
  it("lies between the least and the largest force of all of them in every moment", () => {
    const traces = [1, 2, 3, 4].map((factor) => traceOf(4, (time) => [100 * factor * time, 110 * factor * time]));
    const band = bandOf(traces)!;
    expect(band).toMatchObject({ draws: 4, duration: 4, bins: BINS });
    for (const line of TRACE_LINES)
      for (let bin = 0; bin < BINS; bin++) {
        expect(band[line][2 * bin]).toBe(traces[0]![line][2 * bin]);
        expect(band[line][2 * bin + 1]).toBe(traces[3]![line][2 * bin + 1]);
      }
  });

  it("ends with the shortest of them, loses no peak before that, and counts time from the beginning of each", () => {
    const peak = (at: number, duration: number) =>
      traceOf(duration, (time) => [0, Math.abs(time - at) < 0.05 ? 9000 : 1000]);
    const band = bandOf([peak(1, 4), peak(1.5, 5), peak(2, 6), peak(7, 8)])!;
    expect(band.duration).toBe(4);
    const largest = (time: number) => band.leash[2 * Math.floor((time / 4) * BINS) + 1]!;
    expect([1, 1.5, 2].map(largest)).toEqual([9000, 9000, 9000]);
    expect([0.5, 3, 3.9].map(largest)).toEqual([1000, 1000, 1000]);
  });

  it("is none of a few draws", () => {
    expect(bandOf([1, 2, 3].map(() => traceOf(4, () => [0, 1])))).toBeUndefined();
  });
});

describe("a search that keeps traces", () => {
  const ordered: RunOrder[] = [];
  const run = ({ trace, draw }: RunOrder) =>
    trace ? { trace: traceOf(3, () => [0, 1000 + 10 * (draw.mass ?? 0)]) } : {};
  const { outcome } = searched(testRig, { share: () => 0.3, run }, { traces: true }, undefined, ordered);

  it("keeps those of each event and of its first draws, and no more", () => {
    const byEvent = new Map<string, number>();
    for (const { event, draw, trace } of ordered)
      if (trace && Object.keys(draw).length > 0)
        byEvent.set(JSON.stringify(event), (byEvent.get(JSON.stringify(event)) ?? 0) + 1);
    expect(byEvent.size).toBeGreaterThan(0);
    for (const traced of byEvent.values()) expect(traced).toBe(BLOCK_DRAWS);
  });

  it("has a band of every event that was drawn, and of no other", () => {
    for (const { runs, band, trace } of outcome.whatIfs) {
      expect(trace).toBeDefined();
      expect(band?.draws).toBe(runs > BLOCK_DRAWS ? BLOCK_DRAWS : undefined);
    }
    expect(outcome.whatIfs.some(({ band }) => band)).toBe(true);
  });

  it("tells of none that nobody asked for, though results have them", () => {
    const traced = () => ({ trace: traceOf(3, () => [0, 1000]) });
    const plain = searched(testRig, { share: () => 0.3, run: traced }).outcome.whatIfs;
    expect(plain.every(({ trace, band }) => trace === undefined && band === undefined)).toBe(true);
  });
});
