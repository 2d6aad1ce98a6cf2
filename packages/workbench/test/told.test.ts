/** What is said of a search under way, of a verdict, of the numbers of a fall, and of a layout beside the first. */
import { readRig } from "@secondline/rig";
import type { Outcome } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { describe, expect, it } from "vitest";
import {
  fallNumbers,
  type RunSlice,
  roleWords,
  rowNumbers,
  type SandboxState,
  type ShownRun,
  sentenceBelowWord,
  studyNotice,
  studyTold,
} from "../src/index.ts";
import { shortReason, stoppedWords } from "../src/verdict/studyWords.ts";
import { demoDocument } from "./demoDocument.ts";

const part = (settled: boolean, governing = true) => ({ settled, ...(governing ? { governing: "expected" } : {}) });
const soFar = (events: number, more: object = {}) =>
  ({
    verdict: "open",
    search: { events, of: 44, runs: 250 },
    parts: [part(true), part(false), part(true, false)],
    ...more,
  }) as unknown as Outcome;
const run = (study: object, more: object = {}) =>
  ({
    study,
    effort: "quick",
    verdict: { key: "k", found: undefined, soFar: undefined },
    ...more,
  }) as unknown as RunSlice;

describe("a search for the verdict", () => {
  it("counts the what-ifs that it has looked at, once it has told how many there are", () => {
    expect(studyTold(run({ kind: "waiting" })).doing).not.toMatch(/\d/);
    const { doing } = studyTold(run({ kind: "busy", progress: { done: 0.5, of: 44, made: 12 } }));
    expect(doing).toContain("12 of 44");
    expect(doing).not.toMatch(/\.$/);
  });

  it("goes on where the quick look ended, and never back", () => {
    const done = (effort: "quick" | "full", share: number) =>
      studyTold(run({ kind: "busy", progress: { done: share } }, { effort })).done;
    expect(done("quick", 1)).toBeCloseTo(done("full", 0), 9);
    expect(done("full", 1)).toBeCloseTo(1, 9);
    expect(done("full", 0.5)).toBeGreaterThan(done("quick", 1));
  });

  it("tells how many parts are settled once all what-ifs have been looked at, of those alone that carry something", () => {
    const { doing } = studyTold(run({ kind: "busy", progress: { done: 0.9, of: 44, made: 300, soFar: soFar(44) } }));
    expect(doing).toContain("300");
    expect(doing).toContain("1");
    expect(doing).toContain("2");
    expect(doing).not.toContain("3 parts");
  });

  it("that was stopped says what it had counted, and that nothing was found only where nothing was", () => {
    const nothing = stoppedWords(soFar(12));
    expect(nothing).toContain("12");
    expect(stoppedWords(soFar(12, { verdict: "fails" })).length).toBeLessThan(nothing.length);
    expect(stoppedWords(undefined)).not.toMatch(/\d/);
  });

  it("that failed with a reason per what-if gives the first of them", () => {
    expect(shortReason("short")).toBe("short");
    expect(shortReason("x".repeat(1000))).toHaveLength(241);
  });
});

it("a verdict's sentence leaves its word to the heading above it, and begins with a capital", () => {
  const read = readRig(demoDocument());
  if (!read.ok) throw new Error(JSON.stringify(read.issues[0]));
  const outcome = {
    verdict: "fails",
    cautions: [],
    reasons: [{ kind: "notCaught", event: 0 }],
    parts: [],
    whatIfs: [{ whatIf: { kind: "leashFall", at: 0.5 }, ok: true, caughtBy: "nothing", gaveWay: [] }],
    search: { complete: false, events: 3, of: 44, runs: 9, gaps: [] },
  } as unknown as Outcome;
  const [whole, word] = [words.verdict(read.rig, outcome), words.verdictWord(outcome)];
  const said = sentenceBelowWord(read.rig, outcome);
  expect(whole.toLowerCase().endsWith(said.toLowerCase())).toBe(true);
  expect(said.startsWith(`${word}:`)).toBe(false);
  expect(said[0]).toBe(said[0]!.toUpperCase());
});

describe("the numbers of a fall", () => {
  const peaks = { leash: 4211, mainA: 0, mainB: 5000, backupA: 0, backupB: 0 };
  const shown = (more: object = {}) => ({ outcome: { peaks, drop: 6.21, ...more } }) as unknown as ShownRun;

  it("are its peaks and its drop, rounded up", () => {
    const [pull, ...others] = fallNumbers(shown(), undefined);
    expect(pull).toMatchObject({ now: expect.stringContaining("4.22"), before: undefined });
    expect(others.at(-1)!.now).toContain("6.3");
  });

  it("leave out what a fall does not have", () => {
    expect(fallNumbers(shown({ peaks: undefined, drop: undefined }), undefined)).toEqual([]);
    expect(fallNumbers(shown({ drop: undefined }), undefined)).toHaveLength(5);
  });

  it("stand beside those of the run before only where they are others", () => {
    const rows = fallNumbers(shown(), shown({ drop: 8 }));
    expect(rows[0]!.before).toBeUndefined();
    expect(rows.at(-1)!.before).toContain("8");
  });

  it("say no drop of a walker who was lost, and no height where the feet touch", () => {
    const row = (more: object) => rowNumbers({ drop: 6.21, peaks, feetClearance: 2.09, ...more } as never);
    expect(row({})).toHaveLength(3);
    expect(row({}).at(-1)).toContain("2.0");
    expect(row({ lostBecause: "ground" })).toHaveLength(2);
    expect(row({ feetClearance: 0 })).toHaveLength(2);
  });
});

it("a layout is the same, changed in so many places, or another rig", () => {
  expect(new Set([roleWords(0), roleWords(2), roleWords(7), roleWords(70)]).size).toBe(3);
  expect(roleWords(2)).toContain("2");
});

describe("beside a verdict that is not being looked for", () => {
  const notice = (study: object, verdict: object = {}) =>
    studyNotice({
      run: { study, verdict: { key: "now", ...verdict } },
      assessment: { key: "now", issues: [] },
      document: { issues: [] },
    } as unknown as SandboxState);

  it("stands nothing while the search goes on, or where more runs would change nothing", () => {
    for (const kind of ["busy", "waiting", "idle", "done"]) expect(notice({ kind })).toBeUndefined();
  });

  it("stands how to go on with a search that was stopped, and how to try one again that failed", () => {
    expect(notice({ kind: "stopped" })).toMatchObject({ does: "lookOn", isAlert: false });
    expect(notice({ kind: "stopped" }, { soFar: soFar(12) })?.text).toContain("12 of 44");
    expect(notice({ kind: "failed", message: "out of memory" })).toMatchObject({
      does: "lookOn",
      isAlert: true,
      text: expect.stringContaining("out of memory"),
    });
  });

  it("stands the way to more runs where a part lies near its limit, and nothing where none does", () => {
    const outcome = (settled: boolean) =>
      soFar(44, { verdict: "thin", reasons: [], parts: [part(true), part(settled)] });
    expect(notice({ kind: "done" }, { found: { outcome: outcome(false) } })).toMatchObject({ does: "lookLonger" });
    expect(notice({ kind: "done" }, { found: { outcome: outcome(true) } })).toBeUndefined();
  });
});
