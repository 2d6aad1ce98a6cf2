import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import { readBreakLog, readWearRecord } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { type Assessment, assess, rigStrengths, speaksOf } from "../src/index.ts";

const text = (name: string) => readFileSync(new URL(`../../../demo-data/${name}`, import.meta.url), "utf8");
const rigOf = (name: string) => {
  const reading = readRig(text(name));
  if (!reading.ok) throw new Error(name);
  return reading.rig;
};
const old = rigOf("old-rig.json");
const sound = rigOf("sound-rig.json");
const reading = readWearRecord(text("old-rig-wear.json"));
if (!reading.ok) throw new Error("wear");
const wear = reading.record;
const log = readBreakLog(text("break-log.csv"));
if (!log.ok) throw new Error("log");
const tests = log.tests;

const worked = (assessment: Assessment) => {
  const found = assess(assessment);
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.assessed;
};
const refused = (assessment: Assessment) => {
  const found = assess(assessment);
  if (found.ok) throw new Error("was to be refused");
  return found.issues;
};

describe("an assessment", () => {
  it("of a rig alone is the rig as written, and says that nothing else was taken", () => {
    const { rig, taken } = worked({ rig: old });
    expect(rig).toEqual(old);
    expect(taken).toEqual({ judged: [] });
  });

  it("of an earlier day knows nothing of tests that were pulled after it, and says how many it left out and why", () => {
    const on = "2026-11-01";
    const later = tests.map((test) => ({ ...test, date: "2026-11-02" }));
    const first = later.map((test, i) => (i === 0 ? { ...test, date: on } : test));
    const without = worked({ rig: old, wear, on });
    const all = worked({ rig: old, wear, on, tests: later });
    expect(all.tests).toEqual([]);
    expect(rigStrengths(all.rig, all.tests)).toEqual(rigStrengths(without.rig, without.tests));
    expect(all.hash).toBe(without.hash);
    expect(all.taken.tests).toEqual({ given: tests.length, count: 0 });
    expect(all.notes).toContainEqual({ code: "tests.later", values: { count: tests.length, day: { day: on } } });
    expect(worked({ rig: old, wear, on, tests: first }).tests).toHaveLength(1);
    expect(worked({ rig: old, wear, on: "2026-11-02", tests: later }).tests).toHaveLength(tests.length);
    // Without a day nothing is later.
    expect(worked({ rig: old, tests: later }).tests).toHaveLength(tests.length);
  });

  it("takes wear record, tests and judgements together, and says which", () => {
    const all = worked({
      rig: old,
      wear,
      on: "2026-11-01",
      tests,
      judgements: [{ part: "leash", factor: 0.7, reason: "furry" }],
    });
    expect(all.taken).toMatchObject({
      on: "2026-11-01",
      wear: { name: wear.name, lines: ["main", "backup"] },
      tests: { given: tests.length },
      judged: ["leash"],
    });
    expect(all.taken.tests!.count).toBeGreaterThan(0);
    expect(all.rig.leash.own).toMatchObject({ factor: 0.7 });
    expect(all.notes.length).toBeGreaterThan(0);
  });

  it("has a hash that changes with everything that counts, and with nothing else", () => {
    const hash = (assessment: Assessment) => worked(assessment).hash;
    const plain = hash({ rig: old });
    expect(hash({ rig: structuredClone(old) })).toBe(plain);
    expect(hash({ rig: old, wear, on: "2026-11-01" })).not.toBe(plain);
    expect(hash({ rig: old, tests })).not.toBe(plain);
    expect(hash({ rig: old, judgements: [{ part: "ring", factor: 0.9, reason: "worn" }] })).not.toBe(plain);
  });

  it("crosses to another thread and gives the same strengths there", () => {
    const assessed = worked({ rig: old, wear, on: "2026-11-01", tests });
    const there = structuredClone(assessed);
    expect(rigStrengths(there.rig, there.tests).parts).toEqual(rigStrengths(assessed.rig, assessed.tests).parts);
  });

  it("refuses a record of another rig, with the rig that it speaks of and the remedy", () => {
    expect(speaksOf(wear, old, "2026-11-01")).toBe(true);
    expect(speaksOf(wear, sound, "2026-11-01")).toBe(false);
    const [issue] = refused({ rig: sound, wear, on: "2026-11-01" });
    expect(issue!.message.code).toBe("record.otherRigs");
    expect(JSON.stringify(issue!.message)).toContain(old.id!);
  });

  it("refuses a record that hangs webbing in a section that the rig has not", () => {
    const webbings = wear.webbings.map((webbing) => ({
      ...webbing,
      entries: webbing.entries.map((entry) =>
        "placement" in entry ? { ...entry, placement: { ...entry.placement, section: 3 } } : entry,
      ),
    }));
    const issues = refused({ rig: old, wear: { ...wear, webbings }, on: "2026-11-01" });
    expect(issues.map(({ path }) => path)).toEqual([
      "wear.webbings[0].entries[6].section",
      "wear.webbings[1].entries[2].section",
    ]);
  });

  it("refuses a record without a day, a day that is none, and a day before the record begins", () => {
    expect(refused({ rig: old, wear })[0]!.message).toEqual({ code: "day.wanted", values: {} });
    expect(refused({ rig: old, on: "2026-02-30" })[0]!.message).toMatchObject({
      code: "day.form",
      values: { day: "2026-02-30" },
    });
    expect(refused({ rig: old, wear, on: "2020-01-01" })[0]!.message.code).toBe("day.beforeRecord");
  });

  it("of a line tells every judgement that another takes the place of, whichever section it is of, each once", () => {
    const [section] = sound.main.sections;
    const judged = (reason: string, factor: number) => ({ ...section!, own: { reason, factor } });
    const sections = [judged("pale", 0.9), section!, judged("melted", 0.5), judged("pale", 0.9)];
    const rig = { ...sound, main: { ...sound.main, sections } };
    const { notes } = worked({ rig, judgements: [{ part: "main", factor: 1.2, reason: "looks new" }] });
    expect(notes).toMatchObject([
      { code: "judgement.displaced", values: { part: "main", reason: "pale" } },
      { code: "judgement.displaced", values: { part: "main", reason: "melted" } },
    ]);
  });

  it("refuses a judgement of a part that the rig has not, naming those that it has", () => {
    const [issue] = refused({ rig: old, judgements: [{ part: "ring.3", reason: "?" }] });
    expect(issue!.message).toMatchObject({ code: "judgement.noPart", values: { part: "ring.3" } });
    expect(JSON.stringify(issue!.message)).toContain("leash");
  });
});

describe("upkeep in an assessment", () => {
  const mended = {
    ...wear,
    webbings: wear.webbings.map((one) => ({
      ...one,
      entries: one.entries.filter(({ event }) => event !== "inspected"),
    })),
  };

  it("lapses once a tension is set anew, until somebody has inspected it after that", () => {
    const before = worked({ rig: old, wear, on: "2026-10-09" });
    const lapsed = worked({ rig: old, wear: mended, on: "2026-11-01" });
    expect(before.upkeep.lapses).toEqual([]);
    expect(lapsed.upkeep.lapses).toMatchObject([{ kind: "tension", on: "2026-10-10" }]);
    expect(worked({ rig: old, wear, on: "2026-11-01" }).upkeep.lapses).toEqual([]);
  });

  it("changes the hash, for the verdict is another one, but not that of the runs", () => {
    const [kept, lapsed] = [wear, mended].map((one) => worked({ rig: old, wear: one, on: "2026-11-01" }));
    expect(lapsed!.hash).not.toBe(kept!.hash);
    expect(lapsed!.runsHash).toBe(kept!.runsHash);
  });

  it("on the day itself an inspection is not overdue, on the next it is", () => {
    const plans = [{ rig: "long-gap-old", inspectEveryDays: 22 }];
    const looked = {
      ...wear,
      plans,
      webbings: wear.webbings.slice(0, 1),
      parts: [],
    };
    expect(worked({ rig: old, wear: looked, on: "2026-11-01" }).upkeep).toEqual({
      lapses: [],
      lastEntry: "2026-10-31",
      nextInspection: "2026-11-01",
    });
    expect(worked({ rig: old, wear: looked, on: "2026-11-02" }).upkeep.lapses).toMatchObject([
      { kind: "overdue", due: "2026-11-01" },
    ]);
  });
});
