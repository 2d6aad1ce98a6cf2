/** What comes back from the device is checked part by part, and the rig outlives whatever else is broken. */
import { describe, expect, it, vi } from "vitest";
import { checkSaved } from "../src/keeping/checkSaved.ts";
import { demoDocument, read } from "./demoDocument.ts";

const save = vi.fn();
const check = (saved: unknown) => checkSaved(saved, read, save);
const rig = demoDocument();
const whatIf = { kind: "mainFails", at: 0.25, cutAt: 0, walker: "caught" } as const;
const session = { whatIf, accuracy: "fine", theme: "dark", camera: "overview", showForces: true } as const;
const whole = { document: rig, goodDocument: rig, session };

describe("kept work", () => {
  it("comes back as it was, without a word", () => {
    expect(check(whole)).toEqual({ work: whole, notices: [], setAside: undefined });
    expect(check(undefined)).toEqual({ work: undefined, notices: [], setAside: undefined });
  });

  it.each([
    ["whatIf", { kind: "earthquake", at: 0.5 }, "the what-if in sight"],
    ["whatIf", { ...whatIf, at: 7 }, "the what-if in sight"],
    ["whatIf", { ...whatIf, at: Number.NaN }, "the what-if in sight"],
    ["whatIf", { kind: "legFails", at: 0.5, anchor: "C", leg: 0, walker: "hanging" }, "the what-if in sight"],
    ["accuracy", "exact", "the choice of mesh"],
    ["theme", 3, "the theme"],
    ["camera", "moon", "the view of the scene"],
    ["showForces", "yes", "whether forces are shown"],
    ["wear", { work: null }, "the wear record and break log"],
  ])("loses only %s when that is broken (%o), says so, and offers all of it as a file", (key, value, words) => {
    save.mockClear();
    const saved = { ...whole, session: { ...session, [key]: value } };
    const { work, notices } = check(saved);
    const { [key as keyof typeof session]: _gone, ...rest } = session as Record<string, unknown>;
    expect(work).toEqual({ ...whole, session: rest });
    expect(notices).toHaveLength(1);
    expect(notices[0]!.text).toContain(words);
    expect(notices[0]!.text).toContain("Your rig is unharmed");
    notices[0]!.action!.run();
    expect(JSON.parse(save.mock.calls[0]![0]).document).toEqual(rig);
  });

  it("of the first version opens without the choice that it kept beside record and log", () => {
    const work = { record: { name: "Mine" }, log: { name: "Log", invented: false, tests: [] }, stocks: {} };
    const earlier = [{ name: "Before", replaced: 1, work }];
    const old = { ...work, useTests: true };
    const wear = { work: old, earlier: [{ ...earlier[0]!, work: old }] };
    const { work: read, notices } = check({ ...whole, session: { ...session, wear } });
    expect(notices).toEqual([]);
    expect(read?.session.wear).toEqual({ work, earlier });
    expect(
      check({ ...whole, version: 2, session: { ...session, wear: { work, earlier } } }).work?.session.wear,
    ).toEqual({
      work,
      earlier,
    });
  });

  it("keeps the rig when the whole state of the page is something else", () => {
    for (const broken of [null, 5, "dark", [session]]) {
      const { work, notices } = check({ ...whole, session: broken });
      expect(work).toEqual({ ...whole, session: {} });
      expect(notices[0]!.text).toContain("the state of the page");
    }
  });

  it("keeps the last good rig when the one being typed in is gone, and the typed one when the good one is", () => {
    expect(check({ ...whole, document: "half a file" }).work).toEqual(whole);
    expect(check({ ...whole, goodDocument: undefined }).work).toEqual(whole);
  });

  it("sets a rig aside that this version cannot read, with its faults and the text of it", () => {
    save.mockClear();
    const newer = { ...rig, format: "of another century" };
    const { work, notices, setAside } = check({ document: newer, goodDocument: newer, session });
    expect(work).toBeUndefined();
    expect(setAside).toBe(newer);
    expect(notices[0]!.text).toContain("set aside");
    expect(notices[0]!.details!.length).toBeGreaterThan(0);
    notices[0]!.action!.run();
    expect(JSON.parse(save.mock.calls[0]![0]).document).toEqual(newer);
  });

  it("survives whatever a browser can keep", () => {
    const circle: { self?: unknown; big: bigint } = { big: 3n };
    circle.self = circle;
    for (const saved of [5, "text", [], new Map(), circle]) {
      const { work, notices } = check(saved);
      expect(work).toBeUndefined();
      notices[0]!.action!.run();
    }
  });
});
