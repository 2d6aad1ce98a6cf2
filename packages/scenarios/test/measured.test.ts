/** A load cell's recording beside the model: what is told of it, what of it is used, and where it lies among the draws. All synthetic. */
import { beforeAll, describe, expect, it } from "vitest";
import {
  type Assessed,
  assessRig,
  compareMeasured,
  type MeasuredComparison,
  type MeasuredFall,
  type ModelSignals,
  modelSignals,
  readRecording,
  type WhatIf,
} from "../src/index.ts";
import { finish } from "./finish.ts";
import { csvOf, type SyntheticFall, syntheticFall, type WrittenAs } from "./syntheticFall.ts";
import { testRig } from "./testRig.ts";

const event: WhatIf = { kind: "leashFall", at: 0.5 };
const LEAD = 1.5;
let assessed: Assessed;
let synthetic: SyntheticFall;
let model: ModelSignals;
let peakAt: number;
beforeAll(() => {
  assessed = assessRig(testRig);
  synthetic = syntheticFall(assessed, event, "fall@0.5", "leash", LEAD);
  model = finish(modelSignals(assessed, { event, channel: "leash", draws: 8, accuracy: "quick" }));
  peakAt = synthetic.rows.reduce((best, row) => (row[1] > best[1] ? row : best))[0];
}, 120_000);

function fallOf(as: WrittenAs = {}): MeasuredFall {
  const reading = readRecording(csvOf(synthetic, as));
  if (!reading.ok) throw new Error(reading.faults.map(({ message }) => message).join("\n"));
  return reading.fall;
}
function compared(as: WrittenAs = {}): MeasuredComparison {
  const result = compareMeasured(fallOf(as), model);
  if (!result.ok) throw new Error(result.why);
  return result.comparison;
}
const faultsOf = (as: WrittenAs) => {
  const reading = readRecording(csvOf(synthetic, as));
  return reading.ok ? [] : reading.faults;
};
const kinds = ({ notes }: { readonly notes: MeasuredFall["notes"] }) => notes.map(({ kind }) => kind);

describe("a recording of the model's own fall, with noise", () => {
  it("lies within the draws, in peak and impulse, and nothing is noted", () => {
    const { peak, impulse, notes, inCatch, alignment, fall } = compared();
    expect(peak.place).toBe("within");
    expect(impulse!.place).toBe("within");
    expect(peak.low).toBeLessThan(peak.high);
    expect(notes).toEqual([]);
    expect(inCatch).toEqual([]);
    expect(fall).toMatchObject({ synthetic: true, channel: "leash", rate: 2000 });
    // The model's first moment lies where the recording was begun before it; draws reach their catch a little earlier or later.
    expect(Math.abs(alignment.at - LEAD)).toBeLessThan(0.1);
    expect(alignment.off).toBeLessThan(0.1 * peak.median);
  });

  it("is found to the sample when the model has the very same fall", () => {
    const same = finish(
      modelSignals(assessed, { event, channel: "leash", draws: 1, accuracy: "quick", spreads: NO_SPREADS }),
    );
    const result = compareMeasured(fallOf(), same);
    if (!result.ok) throw new Error(result.why);
    const { alignment, peak, impulse } = result.comparison;
    expect(alignment.at).toBeCloseTo(LEAD, 2);
    expect(alignment.off).toBeLessThan(20);
    expect(Math.abs(peak.measured / peak.median - 1)).toBeLessThan(0.01);
    expect(Math.abs(impulse!.measured / impulse!.median - 1)).toBeLessThan(0.01);
  });

  it("that pulled half again as hard lies above all draws, and one that pulled half as hard below", () => {
    expect(compared({ force: (n) => ((1.5 * n) / 1000).toFixed(4) }).peak.place).toBe("above");
    expect(compared({ force: (n) => ((0.5 * n) / 1000).toFixed(4) }).peak.place).toBe("below");
  });

  it("says the same in N and ms, with semicolons and decimal commas, and from another moment on", () => {
    const plain = compared();
    const other = compared({
      columns: "time [ms];force [N]",
      time: (s) => (1000 * s + 86_400_000).toFixed(1).replace(".", ","),
      force: (n) => n.toFixed(1).replace(".", ","),
    });
    expect(other.peak.measured).toBeCloseTo(plain.peak.measured, 0);
    expect(kinds(other)).toEqual(["begins"]);
  });
});

const NO_SPREADS = {
  mass: 0,
  place: 0,
  letGo: 0,
  pretension: 0,
  stiffness: 0,
  backupStiffness: 0,
  leashStiffness: 0,
  damping: 0,
  slack: 0,
  leashLength: 0,
  friction: 0,
  moment: 0,
};

describe("what is wrong with a recording is told, and what of it was used", () => {
  it("a gap beside the catch changes nothing but the note", () => {
    const { notes, inCatch, peak, impulse } = compared({ keep: (t) => t < 0.2 || t > 0.4 });
    expect(notes).toHaveLength(1);
    expect(notes[0]).toMatchObject({ kind: "gap" });
    expect(inCatch).toEqual([]);
    expect([peak.atLeast, impulse === undefined]).toEqual([false, false]);
  });

  it("a gap over the peak leaves a least value that is never called within the draws, and no impulse", () => {
    const { notes, peak, impulse } = compared({ keep: (t) => Math.abs(t - peakAt) > 0.03 });
    expect(kinds({ notes })).toEqual(["gap"]);
    expect([peak.atLeast, peak.place]).toEqual([true, "open"]);
    expect(impulse).toBeUndefined();
  });

  it("empty cells and what recorders write for no number are a gap as well", () => {
    const fall = fallOf({ force: (n, t) => (t > 0.5 && t < 0.6 ? (t < 0.55 ? "" : "NaN") : (n / 1000).toFixed(4)) });
    expect(kinds(fall)).toEqual(["gap"]);
    expect(fall.force[Math.round(0.55 * 2000)]).toBeNaN();
  });

  it("an overload that the recorder writes is a least value, however few samples it lasts", () => {
    const over = compared({ force: (n, t) => (Math.abs(t - peakAt) < 0.0004 ? "OVERLOAD" : (n / 1000).toFixed(4)) });
    expect(over.notes).toMatchObject([{ kind: "uneven" }, { kind: "overload" }]);
    expect(over.inCatch).toHaveLength(1);
    expect([over.peak.atLeast, over.peak.place]).toEqual([true, "open"]);
    const often = fallOf({ force: (n, t) => (Math.round(t * 2000) % 2 === 1 ? "OVL" : (n / 1000).toFixed(4)) });
    expect(kinds(often).filter((kind) => kind === "overload")).toHaveLength(1);
    const beside = compared({ force: (n, t) => (t > 0.2 && t < 0.201 ? "ovl" : (n / 1000).toFixed(4)) });
    expect([kinds(beside), beside.inCatch]).toEqual([["uneven", "overload"], []]);
  });

  it("a larger force outside of the catch is told, and the peak is a least value", () => {
    // A knock of 1.4 times the peak, before the fall.
    const knock = (t: number) => (t > 0.2 && t < 0.4 ? 1.4 * Math.sin((Math.PI * (t - 0.2)) / 0.2) : 0);
    const most = compared().peak.measured;
    const two = compared({ force: (n, t) => ((n + most * knock(t)) / 1000).toFixed(4) });
    expect(two.elsewhere!.at).toBeCloseTo(0.3, 1);
    expect(two.elsewhere!.force).toBeGreaterThan(1.3 * most);
    expect(two.peak.measured).toBeCloseTo(most, 0);
    expect([two.peak.atLeast, two.peak.place]).toEqual([true, "open"]);
    expect(compared().elsewhere).toBeUndefined();
  });

  it("decimal commas between commas are refused: a force of 1,234 kN would read as 1 kN", () => {
    const [fault] = faultsOf({
      columns: "time [ms],force [kN]",
      time: (s) => (1000 * s).toFixed(0),
      keep: (t) => Math.round(t * 2000) % 2 === 0,
      force: (n) => (n / 1000).toFixed(3).replace(".", ","),
    });
    expect(fault).toMatchObject({ line: 6, expected: "2 cells, as in the header" });
    // Empty cells at the end of a line are none.
    expect(faultsOf({ force: (n) => `${(n / 1000).toFixed(3)},,` })).toEqual([]);
  });

  it("two columns of force are refused: which of them is the cell in question nobody knows", () => {
    const columns = "time [s],force A [kN],force B [kN]";
    const [fault] = faultsOf({ columns, force: (n) => `${(n / 1000).toFixed(3)},${(n / 500).toFixed(3)}` });
    expect(fault).toMatchObject({ line: 5, got: "2 columns of force" });
    expect(faultsOf({ columns: columns.replace("force B", "other"), force: (n) => `${n / 1000},1` })).toEqual([]);
  });

  it("a recording without any number is refused as such", () => {
    expect(faultsOf({ force: () => "NaN" })[0]!.message).toBe("There is no force in it.");
  });

  it("single samples without a number leave longer intervals, which are told", () => {
    const every = (t: number) => Math.round(t * 2000) % 3 === 1;
    const fall = fallOf({ force: (n, t) => (every(t) ? "" : (n / 1000).toFixed(4)) });
    expect(fall.notes).toMatchObject([{ kind: "uneven", most: expect.closeTo(0.001, 6) }]);
  });

  it("a saturated cell gives a least value, open among the draws, or above them all the same", () => {
    const limit = (n: number) => (Math.min(n, 1200) / 1000).toFixed(4);
    const cut = compared({ force: limit });
    expect(kinds(cut)).toEqual(["saturated"]);
    expect([cut.peak.atLeast, cut.peak.place]).toEqual([true, "open"]);
    expect(cut.impulse!.atLeast).toBe(true);
    const high = compared({ force: (n) => (Math.min(2.5 * n, 4000) / 1000).toFixed(4) });
    expect(kinds(high)).toEqual(["saturated"]);
    expect([high.peak.atLeast, high.peak.place]).toEqual([true, "above"]);
  });

  it("forces below zero are told, and all of them below zero are turned round", () => {
    expect(kinds(compared({ force: (n) => ((n - 300) / 1000).toFixed(4) }))).toEqual(["negative"]);
    const turned = compared({ force: (n) => (-n / 1000).toFixed(4) });
    expect(kinds(turned)).toEqual(["reversed"]);
    expect(turned.peak.measured).toBeCloseTo(compared().peak.measured, 6);
  });

  it("a zero that is too low makes peak and impulse least values: nobody may read from them that the model is safe", () => {
    const low = compared({ force: (n) => ((n - 800) / 1000).toFixed(4) });
    expect(low.inCatch.map(({ kind }) => kind)).toEqual(["negative"]);
    expect([low.peak.atLeast, low.peak.place]).toEqual([true, "open"]);
    expect([low.impulse!.atLeast, low.impulse!.place]).toEqual([true, "open"]);
    const high = compared({ force: (n) => ((2.5 * n - 800) / 1000).toFixed(4) });
    expect([high.peak.place, high.impulse!.place]).toEqual(["above", "above"]);
  });

  it("too few samples a second for the filter make peak and impulse least values", () => {
    const { notes, peak, impulse } = compared({ keep: (t) => Math.round(2000 * t) % 10 === 0 });
    expect(kinds({ notes })).toEqual(["slow"]);
    expect([peak.atLeast, impulse!.atLeast]).toEqual([true, true]);
    expect([peak.place, impulse!.place]).not.toContain("below");
  });

  it("samples further apart than the filter allows do so too, and those that are merely uneven do not", () => {
    const uneven = (least: number) => (t: number) => Math.abs(t - peakAt) > 0.2 || Math.round(2000 * t) % least === 0;
    const half = (n: number) => ((0.5 * n) / 1000).toFixed(4);
    const far = (t: number) => Math.round(4000 * t) % 8 < 4 || Math.round(2000 * t) % 3 === 0;
    const merely = compared({ keep: uneven(2), force: half });
    expect([kinds(merely), merely.peak.atLeast, merely.peak.place]).toEqual([["uneven"], false, "below"]);
    const wide = compared({ keep: (t) => Math.round(2000 * t) % 2 === 0 && far(t), force: half });
    expect(kinds(wide)).toContain("uneven");
    expect([wide.peak.atLeast, wide.peak.place, wide.impulse!.place]).toEqual([true, "open", "open"]);
  });

  it("a time axis from elsewhere and forces that were turned round leave the numbers what they are", () => {
    for (const as of [
      { time: (s: number) => (s + 100).toFixed(4), force: (n: number) => ((0.5 * n) / 1000).toFixed(4) },
      { force: (n: number) => ((-0.5 * n) / 1000).toFixed(4) },
    ]) {
      const { peak, impulse, inCatch, notes } = compared(as);
      expect(notes).toHaveLength(1);
      expect(inCatch).toEqual([]);
      expect([peak.atLeast, peak.place, impulse!.atLeast]).toEqual([false, "below", false]);
    }
  });

  it("a recording that begins after the peak has a least value alone", () => {
    const { peak, impulse, notes } = compared({ keep: (t) => t > peakAt + 0.1 });
    expect(notes.map(({ kind }) => kind)).toEqual(["begins"]);
    expect(impulse).toBeUndefined();
    expect([peak.atLeast, peak.place]).toEqual([true, "open"]);
  });

  it("a recording of another moment is not laid over the fall by force", () => {
    const late = fallOf({ keep: (t) => t > synthetic.rows.at(-1)![0] - 0.06 });
    expect(compareMeasured(late, model)).toEqual({ ok: false, why: "noOverlap" });
    expect(compareMeasured(fallOf(), { signals: [], failed: ["audit"] })).toEqual({ ok: false, why: "noDraws" });
  });
});

describe("another file, unit or axis is refused, with its place", () => {
  const one = (as: WrittenAs) => {
    const [first, ...rest] = faultsOf(as);
    expect(rest).toEqual([]);
    return first!;
  };

  it("newtons under a header of kN, and the other way round", () => {
    expect(one({ force: (n) => n.toFixed(1) }).message).toContain("Is the force in N while the header says kN?");
    expect(one({ columns: "time [s],force [N]" }).message).toContain("Is the force in kN while the header says N?");
  });

  it("milliseconds under a header of seconds, and the other way round", () => {
    expect(one({ time: (s) => (1000 * s).toFixed(1) }).message).toContain("in milliseconds while the header says s?");
    expect(one({ columns: "time [ms],force [kN]" }).message).toContain("in seconds while the header says ms?");
  });

  it("times of day, times that go backwards, and the same time twice", () => {
    const clock = faultsOf({ time: (s) => `12:00:0${s.toFixed(3)}` });
    expect(clock).toHaveLength(21);
    expect(clock[0]).toMatchObject({ line: 6, column: "time [s]" });
    expect(clock[0]!.message).toContain("time of day");
    expect(clock.at(-1)!.message).toContain("more faults");
    expect(one({ time: (s) => (s > 2 ? s - 1 : s).toFixed(4) }).message).toContain("goes backwards");
    expect(one({ time: (s) => s.toFixed(2) }).message).toContain("the same time");
  });

  it("no units, no channel, no event, no source, an unknown filter: all at once", () => {
    expect(one({ columns: "t,F" })).toMatchObject({ line: 5, got: '"t,F"' });
    expect(one({ columns: "time,force" }).message).toContain("need their units");
    const head = ["# format: secondline/measured/1", "# filter: CFC 1000", "# mass: heavy"];
    expect(faultsOf({ head }).map(({ column }) => column)).toEqual(["channel", "what-if", "source", "mass", "filter"]);
    expect(readRecording("").ok).toBe(false);
    expect(readRecording("{}").ok).toBe(false);
  });

  it("a word where a force should be, and a recording without a fall", () => {
    expect(faultsOf({ force: (n, t) => (t === 1 ? "much" : (n / 1000).toFixed(4)) })).toHaveLength(1);
    expect(one({ keep: (t) => t < 0.005 }).message).toContain("no fall");
  });
});
