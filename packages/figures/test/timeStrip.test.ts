/** What stands around the plots of the time strip, and which forces they show. */
import { describe, expect, it } from "vitest";
import { PALETTES } from "../src/index.ts";
import { stripSentence } from "../src/time/describe.ts";
import { axisSeconds } from "../src/time/digits.ts";
import type { EndLabel } from "../src/time/endLabel.ts";
import type { EventMark } from "../src/time/eventMarks.ts";
import { plotFrame } from "../src/time/plotFrame.ts";
import { forceProbes, forceView } from "../src/time/shownForces.ts";
import { laidFlags, laidNames, stripGutter } from "../src/time/stripLayout.ts";
import { traceSet } from "../src/time/traceSet.ts";
import { timeRecording } from "./timeRecording.ts";

const recording = timeRecording();
const whole = { from: 0, to: 4 };
const frame = plotFrame({ width: 900, height: 300, compact: false, gutter: { wide: 200, compact: 100 } });
const letters = (text: string) => 7 * text.length;

describe("room for names", () => {
  it("grows with the longest of them, and never falls below what the shortest language needs", () => {
    const [narrow, broad] = [stripGutter("forces", recording, () => 10), stripGutter("forces", recording, () => 300)];
    expect(narrow).toEqual({ wide: 184, compact: 108 });
    expect(broad).toEqual({ wide: 404, compact: 352 });
    expect(stripGutter("energy", recording, () => 10).wide).toBeGreaterThan(narrow.wide);
  });

  it("leaves out the least where there is none for all, and none covers another", () => {
    const label = (i: number): EndLabel => ({
      key: `${i}`,
      name: `${i}`,
      colour: "#000000",
      dash: [],
      width: 1,
      y: 100,
      rank: i,
      valueAt: () => null,
    });
    const { names, size } = laidNames(
      Array.from({ length: 40 }, (_, i) => label(i)),
      frame,
      false,
    );
    expect(names.length).toBeLessThan(40);
    expect(names.at(-1)!.label.key).toBe("39");
    const centres = names.map(({ centre }) => centre).sort((a, b) => a - b);
    for (let i = 1; i < centres.length; i++) expect(centres[i]! - centres[i - 1]!).toBeGreaterThanOrEqual(size - 1e-9);
  });
});

describe("flags of what happened", () => {
  const mark = (time: number, rank: number): EventMark => ({
    key: `${time}`,
    time,
    label: "main line cut",
    sentence: "",
    rank,
  });

  it("stand at their moment, and only for events in sight", () => {
    const flags = laidFlags([mark(1, 1), mark(3, 1)], { from: 0, to: 2 }, frame, letters);
    expect(flags.map(({ mark: { time }, x }) => [time, x])).toEqual([[1, frame.width / 2]]);
  });

  it("keep their line where their words have no room, the graver one its words", () => {
    const crowd = [1, 2, 3, 4, 5, 6].map((rank) => mark(1 + 0.001 * rank, rank));
    const flags = laidFlags(crowd, whole, frame, letters);
    expect(flags).toHaveLength(6);
    const worded = flags.filter(({ words }) => words !== null).map(({ mark: { rank } }) => rank);
    expect(worded.length).toBeLessThan(6);
    expect(Math.min(...worded)).toBeGreaterThan(6 - worded.length);
  });

  it("turn to the left at the right end", () => {
    const [flag] = laidFlags([mark(3.99, 1)], whole, frame, letters);
    expect(flag!.words).toMatchObject({ side: "left" });
  });
});

describe("which forces are drawn", () => {
  const at = { wishes: new Map(), drawn: "both", highlight: null, band: undefined } as const;

  it("is the reader's choice, else the default", () => {
    const first = forceView(recording, at).shown.map(({ id }) => id);
    expect(first).toContain("leash");
    const wishes = new Map([["leash", false]] as const);
    expect(forceView(recording, { ...at, wishes }).shown.map(({ id }) => id)).toEqual(
      first.filter((id) => id !== "leash"),
    );
  });

  it("is filtered unless somebody asks for raw samples alone", () => {
    expect(forceView(recording, at)).toMatchObject({ reading: "filtered", rawBehind: true });
    expect(forceView(recording, { ...at, drawn: "filtered" })).toMatchObject({ reading: "filtered", rawBehind: false });
    expect(forceView(recording, { ...at, drawn: "raw" })).toMatchObject({ reading: "raw", rawBehind: false });
  });

  it("follows the pointer to a trace that is drawn, and to no other", () => {
    expect(forceView(recording, { ...at, highlight: "leash" }).highlight).toBe("leash");
    expect(forceView(recording, { ...at, highlight: "nothing" }).highlight).toBeNull();
  });

  it("is told at the cursor by the names of the traces", () => {
    const traces = traceSet(recording);
    const view = forceView(recording, at);
    for (const { id } of view.shown) traces.require(id, view.reading);
    const probes = forceProbes(traces, view, PALETTES.light);
    expect(probes.map(({ key }) => key)).toEqual(view.shown.map(({ id }) => id));
    expect(probes.find(({ key }) => key === "leash")!.valueAt(recording.peaks.leash.cfc60Time)).toBeCloseTo(
      recording.peaks.leash.cfc60,
      -1,
    );
  });
});

it("the axis tells its ticks apart, with no more decimals than that takes", () => {
  expect(axisSeconds(1, [0, 1, 2])).toBe("1\u00a0s");
  expect(axisSeconds(0.25, [0, 0.25, 0.5])).toBe("0.3\u00a0s");
  expect(axisSeconds(0.125, [0.12, 0.125, 0.13])).toBe("0.125\u00a0s");
  expect(axisSeconds(1, [1])).toBe("1\u00a0s");
});

it("a strip tells what it shows: energy if it shows energy, and the run before only beside forces", () => {
  const before = timeRecording({ scale: 2 });
  const said = (shown: "forces" | "energy" | "numbers") => stripSentence(shown, recording, before, "filtered");
  expect(said("forces").startsWith(said("numbers").trimEnd())).toBe(true);
  expect(said("forces").length).toBeGreaterThan(said("numbers").length);
  expect(said("energy")).not.toContain(said("numbers").trimEnd());
});
