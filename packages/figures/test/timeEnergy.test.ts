import { LEDGER } from "@secondline/engine";
import { describe, expect, it } from "vitest";
import {
  balanceSentence,
  ENERGY_BANDS,
  energyAccount,
  energySentence,
  energyStack,
  indexAt,
} from "../src/time/energyBands.ts";
import { timeRecording } from "./timeRecording.ts";

const run = timeRecording();

describe("the ledger as a stack", () => {
  it("puts every entry of the ledger into one band", () => {
    const entries = ENERGY_BANDS.flatMap((band) => band.entries);
    expect([...entries].sort()).toEqual([...LEDGER].sort());
  });

  it("stacks bands on one another up to the energy that there is", () => {
    const { bands, times, top } = energyStack(run.energy);
    for (const [k, band] of bands.entries()) {
      for (let i = 0; i < times.length; i++) {
        expect(band.top[i]! - band.bottom[i]!).toBeCloseTo(band.values[i]!, 6);
        if (k > 0) expect(band.bottom[i]).toBe(bands[k - 1]!.top[i]);
      }
    }
    expect(Math.max(...bands.at(-1)!.top)).toBeCloseTo(top, 6);
  });

  it("keeps the sum although thin bands are not drawn", () => {
    const series = { ...run.energy.series, lossParting: run.energy.series.lossDrag.map(() => 2) };
    const { bands, thin } = energyStack({ ...run.energy, series });
    expect(thin.map((band) => band.key)).toEqual(["lost-parting"]);
    expect(bands[0]!.bottom[0]).toBeCloseTo(2, 6);
  });
});

describe("where the energy went", () => {
  it("shares out what was given, neither more nor less", () => {
    const account = energyAccount(run.energy, run.walker.lowestTime);
    const sum = (shares: readonly { share: number }[]) => shares.reduce((total, { share }) => total + share, 0);
    expect(sum(account.gave)).toBeCloseTo(1, 9);
    expect(sum(account.took)).toBeCloseTo(1, 3);
    expect(account.gave[0]?.name).toBe("the fall's height");
  });

  it("is told in one sentence, with the small shares summed up", () => {
    expect(energySentence(run)).toMatch(
      /^By the lowest point \(1\.43 s\), 3\.\d\d kJ had come free\. The leash took \d\d %, the backup \d\d %, .* and the rest \d(\.\d)? %; \d(\.\d)? % was still motion\.$/,
    );
  });

  it("does not call the end of the run a lowest point while the walker still falls", () => {
    const falling = { ...run, walker: { ...run.walker, lowestTime: run.duration } };
    expect(energySentence(falling)).toMatch(/^By the end, still falling \(4\.00 s\), /);
  });

  it("counts energy that the legs took out as taken, and energy that they put in as given", () => {
    const legs = (work: number) => {
      const feet = run.energy.series.feet.map((_, i) => (i > 0 ? work : 0));
      return energyAccount({ ...run.energy, series: { ...run.energy.series, feet } }, run.walker.lowestTime);
    };
    expect(legs(-600).took.map(({ name }) => name)).toContain("the walker's legs");
    expect(legs(600).gave.map(({ name }) => name)).toContain("the walker's legs");
    expect(legs(600).released - legs(-600).released).toBeCloseTo(600, 6);
  });

  it("says how well it balances", () => {
    const balance = (imbalance: number, moved: number) => balanceSentence({ ...run.energy, imbalance, moved });
    expect(balance(37, 3700)).toBe("balanced to 1 %");
    expect(balance(1, 3700)).toBe("balanced to better than 0.1 %");
    expect(balance(0, 0)).toBe("nothing moved");
  });

  it("looks up the entry at or before a time", () => {
    const times = Float32Array.of(0, 0.5, 1);
    expect([0, 0.49, 0.5, 0.7, 1, 9].map((time) => indexAt(times, time))).toEqual([0, 0, 1, 1, 2, 2]);
  });
});
