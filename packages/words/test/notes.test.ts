/** Notes, flags and bases of strengths and wear records as a rigger reads them. */
import { readFileSync } from "node:fs";
import { type Rig, readRig } from "@secondline/rig";
import { assess } from "@secondline/scenarios";
import {
  applyWear,
  factorsFromLog,
  type NoteFacts,
  noteFact,
  partStrengths,
  readBreakLog,
  readWearRecord,
  type WearRecord,
} from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { LATER_NOTE_FACTS_ENGLISH } from "../src/laterNoteFactsEnglish.ts";
import { tellNote } from "../src/laterNoteWords.ts";
import { NOTE_FACTS_ENGLISH } from "../src/noteFactsEnglish.ts";

const folder = new URL("../../../demo-data/", import.meta.url);
const text = (name: string) => readFileSync(new URL(name, folder), "utf8");
const json = (name: string) => JSON.parse(text(name));

function rigOf(document: unknown): Rig {
  const reading = readRig(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.rig;
}
function recordOf(document: unknown): WearRecord {
  const reading = readWearRecord(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.record;
}
const old = rigOf(json("old-rig.json"));
const notesOf = (record: WearRecord, rig = old, on = "2026-11-01") =>
  applyWear(rig, record, on).notes.map((note) => tellNote(note));

describe("a wear record tells", () => {
  const written = json("old-rig-wear.json");

  it("old marks with their places, and readings of the tension", () => {
    const notes = notesOf(recordOf(written)).join("\n");
    expect(notes).toMatch(/an old clamp mark of 14 months lies inside the loaded span, 6 m from the marked end/);
    expect(notes).not.toMatch(/[{}]|undefined|\[object/);
  });

  it("what it leaves out of where it hangs", () => {
    const { latitude: _, hemisphere: __, ...silent } = written;
    const notes = notesOf(recordOf(silent)).join("\n");
    expect(notes).toContain("at which latitude it hangs: the sun of below 30 degrees is counted");
    expect(notes).toContain("on which hemisphere it hangs: the one that brings more sun is counted");
  });

  it("a rig of which it says nothing, with those in which its webbing hangs", () => {
    const [note] = notesOf(recordOf(written), { ...old, id: "other", name: "elsewhere" });
    expect(note).toContain('no webbing in the main line or the backup of a rig named "elsewhere" on 1 Nov 2026');
    expect(note).toContain("from the rig's own file, not a state of that day. On that day it has webbing in:");
  });
});

describe("strengths tell", () => {
  it("what raises one, what a doubt rests on, and what is not written down", () => {
    const judgements = [
      { part: "harness", factor: 1.2, reason: "own pulls" },
      { part: "leash", reason: "odd noise" },
    ] as const;
    const reading = assess({ rig: rigOf(json("sound-rig.json")), judgements });
    if (!reading.ok) throw new Error("it cannot be judged");
    const flags = partStrengths(reading.assessed.rig).flatMap((part) => part.flags.map((flag) => tellNote(flag)));
    expect(flags).toContain("own judgement × 1.2, RAISES the strength by 20 %: own judgement, own pulls");
    expect(flags.join("\n")).toContain("odd noise; no factor given");
  });

  it("a factor that raises one by a hundredth as the same in per cent beside it", () => {
    const judgements = [{ part: "harness", factor: 1.01, reason: "own pulls" }] as const;
    const reading = assess({ rig: rigOf(json("sound-rig.json")), judgements });
    if (!reading.ok) throw new Error("it cannot be judged");
    const flags = partStrengths(reading.assessed.rig).flatMap((part) => part.flags.map((flag) => tellNote(flag)));
    expect(flags).toContain("own judgement × 1.01, RAISES the strength by 1 %: own judgement, own pulls");
  });

  it("what is not written down, and what counts in its place", () => {
    const flags = partStrengths(old).flatMap((part) => part.flags.map((flag) => tellNote(flag)));
    const { sun: _, ...condition } = { ...old.leash.condition, monthsOutside: undefined };
    const blank = { ...old, leash: { ...old.leash, condition: { ...(condition.wet ? { wet: true } : {}) } } };
    const more = partStrengths(blank).flatMap((part) => part.flags.map((flag) => tellNote(flag)));
    expect(more.join("\n")).toContain("how long the leash was outside is not written down; it can be");
    expect(flags.join("\n")).not.toMatch(/[{}]|undefined|\[object/);
  });

  it("what own tests they rest on, and that invented ones were never pulled", () => {
    const log = readBreakLog(text("break-log.csv"));
    if (!log.ok) throw new Error("the log is not readable");
    const notes = partStrengths(old, factorsFromLog(log.tests)).flatMap(({ bases }) =>
      bases.map(({ note }) => tellNote(note)),
    );
    expect(notes.join("\n")).toMatch(/invented tests, nothing was pulled: \d+ own break tests? of/);
    const reading = assess({ rig: old, tests: log.tests });
    const said = reading.ok ? reading.assessed.notes.map((note) => tellNote(note)) : [];
    expect(said[0]).toMatch(/^Own break tests: \d+ of \d+ count towards this rig, for /);
  });

  it("a text as long as a file, in short", () => {
    const told = tellNote(noteFact("need.unfit", { name: "x".repeat(5000), reason: "Ada" }));
    expect(told).toMatch(/^x{200}…: judged unfit by Ada\. It must come down\.$/);
  });

  it("a wear of which nothing is known any more", () => {
    const range = { quantity: { brought: "share of the width" }, got: 0.99, from: 0, to: 0.4 };
    const outside = noteFact("outside.quantity", range);
    const what = { name: { brought: "Main line" }, factor: { brought: "abrasion" }, outside };
    expect(tellNote(noteFact("beyond.known", what))).toBe(
      "Main line, abrasion: share of the width 0.99 is outside 0 to 0.4, beyond which nothing is known.",
    );
  });

  it("what tests say that were pulled wet", () => {
    expect(tellNote(noteFact("tests.noneButWet", { all: 1 }))).toBe(
      "Own break tests: none of 1 count towards this rig.",
    );
    expect(tellNote(noteFact("tests.none", { all: 1 }))).toContain("its strengths are those without a log");
    expect(tellNote(noteFact("tests.wet", { count: 1 }))).toContain("1 pulled wet");
    expect(
      tellNote(noteFact("tests.wetHeldLess", { stocks: { list: ["polyester webbing"], joined: "and" } })),
    ).toContain("Pieces pulled wet held less than is built in for wet ones, of polyester webbing");
  });
});

it("every sentence has the values that it wants, and says what asks for an inspection", () => {
  const storm = { name: "Red webbing", what: noteFact("need.storm", {}), since: { day: "2026-06-01" }, note: "gusts" };
  expect(tellNote(noteFact("need.overNoted", { ...storm, until: { day: "2026-06-04" } }))).toBe(
    "Red webbing: a storm or long flutter from 1 Jun 2026 to 4 Jun 2026 (gusts). No factor is known for that: have it inspected, and write down who judged it how.",
  );
  const place = { from: { length: 20 }, to: { length: 20.5 } };
  const edge = { name: "Red webbing", what: noteFact("need.edge", {}), since: { day: "2026-06-01" }, ...place };
  expect(tellNote(noteFact("need.onPlace", edge))).toContain("edge on 1 Jun 2026, 20 m to 20.5 m from the marked end.");
  const less: NoteFacts["reading.less"] = {
    what: noteFact("reading.tensionUnder", { tension: { force: 3000 }, mass: { mass: 80 } }),
    comes: { force: 1600 },
    low: { force: 1500 },
    high: { force: 1700 },
    stated: { force: 2500 },
    difference: { share: 0.36 },
  };
  expect(tellNote(noteFact("reading.less", less))).toBe(
    "A reading of a tension of 3 kN under 80 kg comes to 1.6 kN (1.5 kN to 1.7 kN) with nobody on the line, 36 % less than the 2.5 kN that the rig states: read again, or put the rig's tension right.",
  );
  for (const [code, sentence] of Object.entries({ ...NOTE_FACTS_ENGLISH, ...LATER_NOTE_FACTS_ENGLISH }))
    expect(sentence.trim(), code).toBe(sentence);
});
