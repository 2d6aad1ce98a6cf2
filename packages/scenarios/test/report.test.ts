import { beforeAll, describe, expect, it } from "vitest";
import { CAUTIONS, compareLayouts, inputHash, type Outcome, report, study, VERSION } from "../src/index.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const hostile = { ...testRig, name: `<script>alert("x")</script> & "A"`, notes: "<img src=x onerror=alert(1)>" };
let outcome: Outcome;
beforeAll(() => {
  const whatIfs = [
    { kind: "leashFall", at: 0.5 },
    { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" },
  ] as const;
  outcome = finish(study(hostile, { accuracy: "quick", whatIfs, traces: true }));
});

describe("the report", () => {
  const page = () => report(outcome, { rig: hostile, date: "2026-07-01" });

  it("stands alone: nothing is fetched, nothing runs", () => {
    expect(/<script|<link|<img|@import|url\((?!#)|https?:/.exec(page())?.[0]).toBeUndefined();
  });

  it("prints what the user wrote as text", () => {
    expect(page()).toContain("&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; &quot;A&quot;");
    expect(page()).toContain("&lt;img src=x onerror=alert(1)&gt;");
  });

  it("numbers its pages and says on each whose it is, with nothing in a name that could end the style", () => {
    const [, style] = /<style>([\s\S]*?)<\/style>/.exec(page())!;
    expect(style).toContain('counter(page) " of " counter(pages)');
    const [, foot] = /@bottom-left \{ content: "([^"]*)"/.exec(style!)!;
    expect(foot).not.toMatch(/[<>]/);
    const read = foot!.replace(/\\([0-9a-f]+) /g, (_, code) => String.fromCodePoint(Number.parseInt(code, 16)));
    expect(read).toBe(
      `${hostile.name} · 2026-07-01 · a computation, not an approval · input ${inputHash(hostile).slice(0, 16)}`,
    );
  });

  it("has verdict, cautions, every part, every what-if, every basis, version and input", () => {
    const text = page();
    for (const caution of CAUTIONS) expect(text).toContain(caution.replace("'", "&#39;"));
    for (const part of outcome.parts) expect(text).toContain(part.name);
    for (const one of outcome.whatIfs) expect(text).toContain(one.title);
    expect(text).toContain(VERSION);
    expect(text).toContain(inputHash(hostile));
    expect(text).toContain("2026-07-01");
  });

  it("draws one plot per governing what-if, each with a name to be read out", () => {
    const plots = page().match(/<svg [^>]*aria-label="Forces over time: [^"]+"/g) ?? [];
    expect(plots.length).toBe(new Set(outcome.parts.map((part) => part.whatIf)).size);
  });

  it("is the same text for the same input", () => {
    expect(page()).toBe(page());
  });
});

describe("a comparison of layouts", () => {
  it("sets the deciding figures side by side and says by how much they differ", () => {
    const softer: Outcome = {
      ...outcome,
      rigName: "softer",
      statics: { ...outcome.statics, standingTension: 0.8 * outcome.statics.standingTension },
    };
    const { names, rows } = compareLayouts([outcome, softer]);
    expect(names).toEqual([outcome.rigName, "softer"]);
    const tension = rows.find((row) => row.id === "standingTension")!;
    expect(tension.spread).toBeCloseTo(0.25, 9);
    expect(rows.find((row) => row.id === "fall.leash")!.better).toBe("less");
    expect(rows.filter((row) => row.id.startsWith("margin.")).length).toBe(outcome.parts.length);
  });

  it("leaves a gap where a layout has no trustworthy number, and claims no difference", () => {
    const failed: Outcome = {
      ...outcome,
      incomplete: [1],
      whatIfs: outcome.whatIfs.map((one, i) => (i === 1 ? { ...one, ok: false } : one)),
    };
    const drop = compareLayouts([outcome, failed]).rows.find((row) => row.id === "fails.drop")!;
    expect(drop.values[1]).toBeUndefined();
    expect(drop.spread).toBeUndefined();
  });

  it("takes two to four", () => {
    expect(() => compareLayouts([outcome])).toThrow(RangeError);
    expect(() => compareLayouts(Array.from({ length: 5 }, () => outcome))).toThrow(RangeError);
  });
});
