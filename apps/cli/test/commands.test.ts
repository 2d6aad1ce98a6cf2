import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { command, demo, type Finished, fixture, scratch } from "./support/command.ts";

let secondline: (...args: string[]) => Promise<Finished>;
beforeAll(async () => {
  secondline = await command();
}, 60_000);

const few = ["--set", "quick", "--accuracy", "quick"];

describe("check", () => {
  let text: Finished;
  beforeAll(async () => {
    text = await secondline("check", demo("sound-rig.json"), ...few);
  });

  it("prints what happens, every part, the verdict and the cautions, in at most 100 columns and without colour codes in a pipe", () => {
    expect(text.err).toBe("");
    expect(text.status).toBe(0);
    for (const words of [
      "walker standing in the middle",
      "Main line",
      "Harness tie-in",
      "Before you rely on this",
      "every number of this rig is invented",
    ]) {
      expect(text.out).toContain(words);
    }
    expect(Math.max(...text.out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(text.out).not.toContain("\u001b");
  });

  it("gives the same as data", async () => {
    const { out, status } = await secondline("check", demo("sound-rig.json"), ...few, "--json");
    expect(status).toBe(0);
    const outcome = JSON.parse(out);
    expect(text.out.replace(/\s+/g, " ")).toContain(outcome.sentence);
    expect(outcome.parts.map((part: { id: string }) => part.id)).toEqual(
      expect.arrayContaining(["harness", "leash", "ring", "main", "backup", "endA", "endB", "anchorA.points.0"]),
    );
    expect(outcome.cautions.length).toBeGreaterThan(3);
  });

  it("runs only the what-ifs asked for", async () => {
    const { out } = await secondline(
      "check",
      demo("sound-rig.json"),
      "--accuracy",
      "quick",
      "--json",
      "--what-if",
      "fall@0.3",
      "--what-if",
      "fails@1,hanging@0.6",
    );
    expect(JSON.parse(out).whatIfs.map((one: { whatIf: unknown }) => one.whatIf)).toEqual([
      { kind: "leashFall", at: 0.3 },
      { kind: "mainFails", at: 0.6, cutAt: 1, walker: "hanging" },
    ]);
  });

  it("leaves with 1 when asked to require that everything holds, and it does not", async () => {
    const loose = [demo("loose-backup.json"), ...few];
    expect((await secondline("check", ...loose)).status).toBe(0);
    expect((await secondline("check", ...loose, "--require")).status).toBe(1);
  });

  it("names the clamp mark of the old rig as first to fail", async () => {
    const { out } = await secondline("check", demo("old-rig.json"), ...few, "--json");
    const outcome = JSON.parse(out);
    expect(outcome.firstToFail).toBe("main");
    expect(outcome.sentence).toContain("clamp mark");
  });
});

describe("a rig with its wear record", () => {
  const worn = [demo("old-rig.json"), "--wear", demo("old-rig-wear.json"), "--on", "2026-11-01"];

  it("is shown along its length, the old clamp mark in the span first among what must be looked at", async () => {
    const { status, out } = await secondline("wear", ...worn);
    expect(status).toBe(0);
    expect(out).toMatch(/an old clamp mark of 14 months\s+lies inside the loaded\s+span/);
    expect(out).toMatch(/clamp mark × 0\.\d+/);
    expect(out).toMatch(/^A [▁▂▃▄▅▆▇█]{60} B$/m);
    const data = JSON.parse((await secondline("wear", ...worn, "--json")).out);
    expect(data.parts.find((part: { id: string }) => part.id === "main").weakest.reason).toBe("clamp mark");
  });

  it("is given its take-down dates, the cautious one not after the central one", async () => {
    const { out } = await secondline("check", ...worn, ...few, "--json");
    const { outlook, notes } = JSON.parse(out);
    expect(notes.length).toBeGreaterThan(0);
    expect(outlook.on).toBe("2026-11-01");
    const day = (side: { date?: string; horizon: string }) => side.date ?? side.horizon;
    expect(day(outlook.cautious) <= day(outlook.central)).toBe(true);
  });

  it("is judged by own break tests where there are some, and says so", async () => {
    const base = (outcome: string) =>
      JSON.parse(outcome).parts.find((part: { id: string }) => part.id === "main").bases;
    const without = await secondline("check", ...worn, ...few, "--json");
    const tested = await secondline("check", ...worn, ...few, "--json", "--tests", demo("break-log.csv"));
    expect(JSON.stringify(base(without.out))).not.toContain("own break test");
    expect(JSON.stringify(base(tested.out))).toContain("own break test");
  });
});

describe("solve", () => {
  const NAMES = [
    "standing.tension",
    "standing.sag",
    "leash.cfc60",
    "leash.peakTime",
    "mainA.cfc60",
    "mainB.cfc60",
    "backupA.cfc60",
    "backupB.cfc60",
    "walker.drop",
    "walker.lowest",
    "energy.gain",
    "firstBreak",
  ];

  it("prints one flat object of numbers", async () => {
    const { status, out, err } = await secondline("solve", fixture("short-fall.json"), "--json");
    expect(err).toBe("");
    expect(status).toBe(0);
    const result = JSON.parse(out);
    expect(Object.keys(result)).toEqual(NAMES);
    expect(result.firstBreak).toBeNull();
    expect(result["leash.cfc60"]).toBeGreaterThan(1000);
    expect(result["backupA.cfc60"]).toBe(0);
    expect(result["walker.drop"]).toBeGreaterThan(1.4);
  });

  it("tells what broke first, when and where", async () => {
    const problem = JSON.parse(readFileSync(fixture("short-fall.json"), "utf8"));
    problem.main.strength = 5000;
    const file = join(scratch(), "breaks.json");
    writeFileSync(file, JSON.stringify(problem));
    const result = JSON.parse((await secondline("solve", file, "--json")).out);
    expect(result.firstBreak).toBe("main");
    expect(result["firstBreak.time"]).toBeGreaterThan(0.3);
    expect(result["firstBreak.at"]).toBeGreaterThanOrEqual(0);
    expect(result["firstBreak.at"]).toBeLessThanOrEqual(1);
  });

  it("prints a table for people", async () => {
    const { out } = await secondline("solve", fixture("short-fall.json"), "--accuracy", "quick");
    expect(out).toMatch(/standing\.tension\s+\d+\s+N/);
  });
});

describe("compare", () => {
  it("puts layouts side by side", async () => {
    const { status, out } = await secondline("compare", demo("sound-rig.json"), demo("loose-backup.json"), ...few);
    expect(status).toBe(0);
    expect(out).toMatch(/^A Example crag, North Gap: sound: /m);
    expect(out).toMatch(/Main line fails: deepest drop\s+[\d.]+\s+[\d.]+\s+\d+ %/);
    expect(out).toContain("every number of this rig is invented");
  });
});

describe("report", () => {
  it("writes a page that stands alone, and does not overwrite one unasked", async () => {
    const file = join(scratch(), "rig.html");
    const first = await secondline("report", demo("sound-rig.json"), "--out", file, ...few);
    expect(first.status).toBe(0);
    expect(existsSync(file)).toBe(true);
    const html = readFileSync(file, "utf8");
    expect(html).toContain("Before you rely on this");
    expect(html).toMatch(/<code>[0-9a-f]{64}<\/code>/);
    expect(html).not.toMatch(/(src|href)=|@import|url\(http|<script/);
    const again = await secondline("report", demo("sound-rig.json"), "--out", file, ...few);
    expect(again.status).toBe(2);
    expect(again.err).toContain("--force overwrites it");
    const withEstimate = ["--force", "--estimate", ...few];
    expect((await secondline("report", demo("sound-rig.json"), "--out", file, ...withEstimate)).status).toBe(0);
    const loads = /<td[^>]*>(?:at least )?[\d.]+ k?N ± [\d.]+ k?N<\/td>/;
    expect(html).not.toMatch(loads);
    expect(readFileSync(file, "utf8")).toMatch(loads);
  });
});

describe("strength", () => {
  it("shows every test, then doubts, then what nineteen of twenty hold", async () => {
    const { status, out } = await secondline("strength", fixture("breaks.csv"));
    expect(status).toBe(0);
    expect(out).toMatch(/new, dry: 5 tests/);
    expect(out.indexOf("•")).toBeLessThan(out.indexOf("with 95 % confidence"));
    expect(out).toContain("fall zone, dry: 2 tests");
  });

  it("gives the same as data", async () => {
    const report = JSON.parse((await secondline("strength", fixture("breaks.csv"), "--json")).out);
    expect(report.groups).toHaveLength(2);
    const { at75, at95 } = report.groups[0].characteristic;
    expect(at95.value).toBeLessThan(at75.value);
    expect(at75.value).toBeLessThan(28_700);
  });
});
