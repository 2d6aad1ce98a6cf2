import type { Recording } from "@secondline/engine";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { csvChunks, csvText } from "../src/time/csv.ts";
import { beforeSentence, cursorSentence, forcesSentence, unloadedSentence } from "../src/time/describe.ts";
import { eventMarks, eventRange, neighbouringMark } from "../src/time/eventMarks.ts";
import { goToEntries } from "../src/time/goTo.ts";
import { flagLanes, spreadLabels } from "../src/time/labelLayout.ts";
import { forceAt, traceSet } from "../src/time/traceSet.ts";
import { loadedTraces, shownAtFirst, unloadedTraces } from "../src/time/traces.ts";
import { timeRecording } from "./timeRecording.ts";

describe("sentences about the forces", () => {
  it("name the hardest pull and the leash's", () => {
    const run = timeRecording();
    expect(forcesSentence(run, "filtered")).toMatch(
      /^Hardest pull: 5\.\d\d kN in the backup at A, 1\.4\d s into the run; the leash peaked at 3\.\d\d kN\.$/,
    );
  });

  it("name the hardest pull of the run before", () => {
    expect(beforeSentence(timeRecording({ scale: 1.4 }), "filtered")).toMatch(
      /^In the run before, drawn wide and pale: 7\.\d\d kN in the backup at A\.$/,
    );
  });

  it("name the traces that stayed unloaded instead of drawing them", () => {
    const run = timeRecording({ unloadedBackup: true });
    expect(unloadedTraces(run).map((trace) => trace.id)).toEqual(["backupA", "backupB", "ringOnBackup"]);
    expect(loadedTraces(run)).toHaveLength(5);
    expect(unloadedSentence(run)).toBe("The backup stayed unloaded.");
    expect(unloadedSentence(timeRecording())).toBe("");
    const nothing = { raw: 0, rawTime: 0, cfc60: 0, cfc60Time: 0 };
    const peaks = { ...timeRecording().peaks, backupB: nothing, ringOnMain: nothing };
    expect(unloadedSentence({ ...timeRecording(), peaks })).toBe(
      "The backup at B and the ring on the main line stayed unloaded.",
    );
  });

  it("read the cursor aloud and leave out traces that have ended", () => {
    const forces = [
      { name: "leash", force: 3260 },
      { name: "main at A", force: null },
    ];
    expect(cursorSentence(1.4, forces)).toBe("1.400 s, leash 3.26 kN");
  });
});

describe("traces to begin with", () => {
  const shownOf = (run: Recording) => [...shownAtFirst(run)];

  it("are leash and line ends, without the ring, and the two connections that pulled hardest", () => {
    expect(shownOf(timeRecording())).toEqual(["leash", "mainA", "mainB", "backupA", "backupB", "connection 1"]);
    const run = timeRecording();
    const pulls = [100, 900, 0, 500];
    const connections = pulls.map((peak) => ({ ...run.connections[0]!, peak }));
    expect(shownOf({ ...run, connections }).slice(-2)).toEqual(["connection 2", "connection 4"]);
    expect(unloadedSentence({ ...run, connections })).toBe("Connection 3 stayed unloaded.");
  });
});

describe("events", () => {
  const run = timeRecording();
  const marks = eventMarks(run);

  it("are named in the order of time", () => {
    expect(marks.map((mark) => mark.label)).toEqual([
      "main line fails",
      "leash taut",
      "ring off the main line",
      "lowest point",
    ]);
    expect(marks[0]?.sentence).toBe("Main line fails, 0.05 s");
  });

  it("tell at what load something parted and how fast the ground was met", () => {
    const events = [
      { time: 1, kind: "break", part: "leash", value: 12_300 },
      { time: 2, kind: "ground", part: "walker", value: 7.25 },
    ] as const;
    expect(eventMarks({ ...run, events }).map((mark) => mark.sentence)).toEqual([
      "Leash gives way at 12.3 kN, 1.00 s",
      "Ground at 7.3 m/s, 2.00 s",
    ]);
  });

  it("that are alike and close together are told as one", () => {
    const tape = (time: number, value: number) => ({ time, kind: "break", part: "tape", value }) as const;
    const slip = (time: number) => ({ time, kind: "slip", part: "weblockB", value: 9000 }) as const;
    const cut = { time: 0.05, kind: "cut", part: "main" } as const;
    const events = [cut, tape(0.055, 300), tape(0.051, 310), tape(0.9, 305), slip(1), slip(1.05)];
    expect(eventMarks({ ...run, events }).map((mark) => mark.sentence)).toEqual([
      "Main line fails, 0.05 s",
      "2 tapes give way, up to 0.31 kN, 0.051 s to 0.055 s",
      "Tape gives way at 0.31 kN, 0.90 s",
      "Weblock at B slips, 2 times, up to 9.00 kN, 1.00 s to 1.05 s",
    ]);
  });

  it("do not call the end of the run a lowest point while the walker still falls", () => {
    const falling = { ...run, walker: { ...run.walker, lowestTime: run.duration } };
    expect(eventMarks(falling).map((mark) => mark.label)).toContain("still falling");
  });

  it("lead from one to the next and back, whichever was gone to", () => {
    expect(neighbouringMark(marks, 0, 1)?.label).toBe("main line fails");
    expect(neighbouringMark(marks, 0.05, 1)?.label).toBe("leash taut");
    expect(neighbouringMark(marks, 1.27, -1)?.label).toBe("main line fails");
    expect(neighbouringMark(marks, 0.05, -1)).toBeNull();
    expect(neighbouringMark(marks, 4, 1)).toBeNull();
  });

  it("span the stretch that is looped", () => {
    const { from, to } = eventRange(run);
    expect(from).toBe(0);
    expect(to).toBeGreaterThan(run.walker.lowestTime);
    expect(to).toBeLessThan(run.duration);
  });
});

describe("the list of places to go to", () => {
  const run = timeRecording();
  const shown = loadedTraces(run).filter(({ id }) => id === "leash" || id === "connection 1");
  const view = { shown, reading: "filtered", rawBehind: false, highlight: null } as const;

  it("has every event and every peak under a name of its own, and goes there", () => {
    const times: number[] = [];
    const leashTaut = { time: 2.5, kind: "leashTaut", part: "leash" } as const;
    const tape = { at: 0.2, tape: true, peak: 300, time: 0.1, parted: true };
    const again = { ...run, events: [...run.events, leashTaut], connections: [...run.connections, tape] };
    const entries = goToEntries(view, eventMarks(again), (time) => times.push(time)).filter((e) => e !== "rule");
    const labels = entries.map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
    expect(labels).toContain("Leash taut, 2.50 s");
    expect(labels.slice(-2)).toEqual([
      expect.stringMatching(/^Peak of the leash, /),
      "Peak of the connection, 2.10 kN",
    ]);
    for (const entry of entries) entry.onSelect();
    expect(times).toEqual([
      0.05,
      1.27,
      1.31,
      run.walker.lowestTime,
      2.5,
      run.peaks.leash.cfc60Time,
      run.connections[0]!.time,
    ]);
  });
});

describe("comma-separated values", () => {
  const run = timeRecording({ duration: 1.5 });

  it("hold every sample of the range, raw and filtered, under named columns", () => {
    const lines = csvText(run, { from: 1.4, to: 1.401 }).trimEnd().split("\n");
    const head = lines[0]!.split(",");
    expect(head[0]).toBe("time [s]");
    expect(head).toContain("leash CFC 60 [N]");
    expect(head.filter((name) => name.startsWith("connection"))).toEqual(["connection [N]"]);
    expect(lines.slice(1).map((line) => line.split(",")[0])).toEqual(
      Array.from({ length: 11 }, (_, i) => (1.4 + i / 10_000).toFixed(4)),
    );
    const raw = head.indexOf("backup at A raw [N]");
    expect(Number(lines[1]!.split(",")[raw])).toBeCloseTo(run.signals.backupA[14_000]!, 1);
    for (const line of lines) expect(line.split(",")).toHaveLength(head.length);
  });

  it("come in pieces that make the whole", () => {
    const pieces = [...csvChunks(run, { from: 0, to: 1.5 })];
    expect(pieces.length).toBeGreaterThan(3);
    expect(pieces.join("").trimEnd().split("\n")).toHaveLength(15_002);
  });
});

describe("traces", () => {
  it("keep the peaks that the run reports", () => {
    const run = timeRecording();
    const { samples } = traceSet(run).require("backupA", "filtered");
    expect(traceSet(run).require("connection 1", "filtered").samples).toBe(run.connections[0]!.force);
    expect(traceSet(run).get("connection 1", "filtered")).not.toBeNull();
    expect(traceSet(run).get("connection 2", "raw")).toBeNull();
    expect(samples[Math.round(run.peaks.backupA.cfc60Time * run.rate)]).toBeCloseTo(run.peaks.backupA.cfc60, 6);
    expect(traceSet(run)).toBe(traceSet(run));
  });

  it("are read between samples on the line that is drawn", () => {
    const run = timeRecording({ duration: 1.5 });
    const pyramid = traceSet(run).require("leash", "raw");
    const [a, b] = [run.signals.leash[14_000]!, run.signals.leash[14_001]!];
    expect(forceAt(pyramid, run.rate, 1.40005)).toBeCloseTo((a + b) / 2, 3);
    expect(forceAt(pyramid, run.rate, 1.5)).toBe(run.signals.leash[15_000]);
    expect(forceAt(pyramid, run.rate, 1.5002)).toBe(run.signals.leash[15_000]);
    expect(forceAt(pyramid, run.rate, 2)).toBeNull();
  });
});

describe("labels", () => {
  const wishes = fc.array(
    fc.record({
      at: fc.double({ min: -50, max: 250, noNaN: true }),
      size: fc.double({ min: 5, max: 20, noNaN: true }),
    }),
    { maxLength: 10 },
  );

  it("in a column never cover one another, keep their order, and stay inside when they fit", () => {
    fc.assert(
      fc.property(wishes, (labels) => {
        const centres = spreadLabels(labels, 0, 200);
        const order = labels.map((_, i) => i).sort((a, b) => centres[a]! - centres[b]!);
        for (const [k, i] of order.entries()) {
          const half = labels[i]!.size / 2;
          expect(centres[i]! - half).toBeGreaterThan(-1e-6);
          expect(centres[i]! + half).toBeLessThan(200 + 1e-6);
          const next = order[k + 1];
          if (next === undefined) continue;
          expect(centres[next]! - labels[next]!.size / 2).toBeGreaterThan(centres[i]! + half - 1e-6);
          expect(labels[i]!.at).toBeLessThanOrEqual(labels[next]!.at);
        }
      }),
      { seed: 7, numRuns: 400 },
    );
  });

  it("stay where they wish to be when nobody is in their way", () => {
    expect(
      spreadLabels(
        [
          { at: 50, size: 10 },
          { at: 20, size: 10 },
        ],
        0,
        100,
      ),
    ).toEqual([50, 20]);
  });

  it("give way to those of higher rank when there is no room", () => {
    const flags = [
      { at: 10, size: 60, rank: 1 },
      { at: 20, size: 60, rank: 3 },
      { at: 30, size: 60, rank: 2 },
    ];
    expect(flagLanes(flags, 1, 100)).toEqual([null, { lane: 0, left: 20 }, null]);
    expect(flagLanes(flags, 2, 100)).toEqual([null, { lane: 0, left: 20 }, { lane: 1, left: 30 }]);
  });

  it("end at their mark near the right edge, and are not drawn outside the view", () => {
    expect(
      flagLanes(
        [
          { at: 90, size: 40, rank: 1 },
          { at: 130, size: 40, rank: 9 },
        ],
        1,
        100,
      ),
    ).toEqual([{ lane: 0, left: 50 }, null]);
  });
});
