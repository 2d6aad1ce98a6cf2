/** A cell at its limit is found, and a smooth peak that was written in steps is not taken for one. */
import { seededRandom } from "@secondline/statistics";
import { describe, expect, it } from "vitest";
import { RECORDING_FORMAT, readRecording } from "../src/index.ts";

/** Swings of a fall: the top of each like that of a sine [kN]. */
const swing = (t: number) =>
  t < 0.5 ? 0 : 3.1 * Math.exp(-(t - 0.5) / 2.5) * Math.abs(Math.sin((Math.PI * (t - 0.5)) / 1.6));
/** A short hard catch. */
const knock = (t: number) => 6 * Math.exp(-(((t - 1) / 0.04) ** 2)) + 1;

interface Written {
  readonly fall: (t: number) => number;
  /** Step in which the force is written [kN]. */
  readonly step: number;
  readonly limit?: number;
  readonly noise?: number;
  readonly rate?: number;
}

function saturated({ fall, step, limit = Number.POSITIVE_INFINITY, noise = 0, rate = 2000 }: Written) {
  const random = seededRandom(3);
  const rows = Array.from({ length: 3 * rate }, (_, k) => {
    const pulled = Math.min(limit, fall(k / rate) + noise * random.normal());
    return `${(k / rate).toFixed(5)},${(Math.round(pulled / step) * step).toFixed(6)}`;
  });
  const head = [`# format: ${RECORDING_FORMAT}`, "# channel: leash", "# what-if: fall@0.5", "# source: synthetic"];
  const reading = readRecording([...head, "time [s],force [kN]", ...rows].join("\n"));
  if (!reading.ok) throw new Error(reading.faults[0]!.message);
  return reading.fall.notes.filter(({ kind }) => kind === "saturated");
}

const peakOf = (fall: (t: number) => number) => Math.max(...Array.from({ length: 30_000 }, (_, k) => fall(k / 10_000)));

const STEPS = [0.000001, 0.001, 0.01, 0.02, 0.05, 0.1] as const;

describe("a smooth peak is no cell at its limit", () => {
  it.each(STEPS)("written in steps of %f kN, at any rate, with noise and without", (step) => {
    for (const fall of [swing, knock])
      for (const rate of [1000, 2000, 10_000])
        for (const noise of [0, 0.002, 0.02])
          expect(saturated({ fall, step, rate, noise }), `${fall.name} ${rate}/s, noise ${noise}`).toEqual([]);
  });
});

describe("a cell at its limit is found", () => {
  it.each(STEPS)("written in steps of %f kN, when it lost four steps or a fiftieth of the peak", (step) => {
    for (const fall of [swing, knock]) {
      const peak = peakOf(fall);
      const limit = Math.floor((peak - Math.max(4 * step, 0.02 * peak)) / step) * step;
      for (const rate of [1000, 2000, 10_000])
        for (const noise of [0, 0.002]) {
          const found = saturated({ fall, step, limit, rate, noise });
          expect(found, `${fall.name} at ${limit} kN, ${rate}/s, noise ${noise}`).toHaveLength(1);
          expect(found[0]).toMatchObject({ force: expect.closeTo(1000 * limit, 1) });
        }
    }
  });

  it("when half of it is missing, and when the recording begins or ends at the limit", () => {
    expect(saturated({ fall: knock, step: 0.01, limit: 3 })).toHaveLength(1);
    expect(saturated({ fall: (t) => (t < 1 ? 4 : swing(t)), step: 0.01 })).toHaveLength(1);
    expect(saturated({ fall: (t) => (t > 1 ? 4 : swing(t)), step: 0.01 })).toHaveLength(1);
  });
});
