/** What can be chosen before a sweep, or before chances, is worked out. */
import { readRig } from "@secondline/rig";
import { assessRig, type Outcome, type WhatIf, whatIfKey } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { chanceChoices } from "../src/chances/chanceChoices.ts";
import { limitKind, whatsOf, whatText, withNumber } from "../src/howFar/choices.ts";
import { firstAsked, type HowFarField, howFarFields, numbersOf, readingOf, type SweepNumber } from "../src/index.ts";
import { demoDocument } from "./demoDocument.ts";
import { handSandbox } from "./handRunner.ts";

const reading = readRig(demoDocument());
if (!reading.ok) throw new Error(JSON.stringify(reading.issues[0]));
const { rig } = reading;

describe("a sweep", () => {
  const ranges = [
    { name: "backup.slack", from: "2 %", to: "8 %" },
    { name: "connections", from: "0", to: "5" },
  ] as const;
  const tension = { name: "main.pretension", from: "2 kN", to: "6 kN" } as SweepNumber;

  it("takes another number with the range that this begins with, and leaves the other number", () => {
    expect(withNumber(ranges, 0, tension)).toEqual([{ name: "main.pretension", from: "2 kN", to: "6 kN" }, ranges[1]]);
    expect(withNumber(ranges.slice(0, 1), 1, tension)).toHaveLength(2);
  });

  it("goes over one number when the other is taken away, whichever it is", () => {
    expect(withNumber(ranges, 0, undefined)).toEqual([ranges[1]]);
    expect(withNumber(ranges, 1, undefined)).toEqual([ranges[0]]);
  });

  it("can look at the margin, the drop, the height, and the load of every part, each told from the others", () => {
    const texts = whatsOf(rig).map(whatText);
    expect(new Set(texts).size).toBe(texts.length);
    expect(texts).toEqual(expect.arrayContaining(["margin", "drop", "height", "load:leash", "load:main"]));
    expect(new Set(whatsOf(rig).map(limitKind))).toEqual(new Set(["margin", "length", "force"]));
  });
});

describe("the form of a sweep", () => {
  const { sandbox } = handSandbox(demoDocument());
  const state = sandbox.store.getState();
  const numbers = numbersOf(state);
  const asked = firstAsked(numbers);
  const form = (now: typeof asked) =>
    howFarFields({ asked: now, rig, numbers, reading: readingOf(now, state) }).flatMap(
      (field): readonly HowFarField[] => (field.kind === "range" ? field.ends : [field]),
    );
  const field = <K extends HowFarField["kind"]>(name: string, kind: K, now = asked) =>
    form(now).find((one): one is Extract<HowFarField, { kind: K }> => one.name === name && one.kind === kind)!;

  it("has a range for each number, and a second number that is not the first", () => {
    expect(form(asked).map(({ name }) => name)).not.toContain("second from");
    const second = field("second", "choice");
    expect(second.options.map(({ value }) => value)).not.toContain(asked.ranges[0]!.name);
    const two = { ...asked, ...second.ask(second.options[1]!.value) };
    expect(two.ranges).toHaveLength(2);
    expect(field("second from", "text", two).value).toBe(two.ranges[1]!.from);
    expect({ ...two, ...field("second", "choice", two).ask("") }.ranges).toEqual(asked.ranges);
  });

  it("asks with each field what it says, and leaves the rest of the question as it is", () => {
    const { name, from } = asked.ranges[0]!;
    expect(field("first to", "text").ask("9 m")).toEqual({ ranges: [{ name, from, to: "9 m" }] });
    expect(field("what", "choice").ask("load:leash")).toEqual({ what: { kind: "load", part: "leash" }, limit: "" });
    expect(field("effort", "choice").ask("full")).toEqual({ effort: "full" });
    expect(field("points", "text").ask("5")).toEqual({ points: "5" });
  });

  it("tells a fault at the field that has it, and an example of the limit's own kind", () => {
    expect(form(asked).flatMap((one) => (one.kind === "text" ? one.messages : []))).toEqual([]);
    expect(field("limit", "text", { ...asked, limit: "much" }).messages).toHaveLength(1);
    expect(field("points", "text", { ...asked, points: "1" }).messages).toHaveLength(1);
    const load = { ...asked, what: { kind: "load", part: "leash" } as const };
    expect(field("limit", "text", load).hint).not.toBe(field("limit", "text").hint);
  });
});

describe("chances", () => {
  const fall: WhatIf = { kind: "leashFall", at: 0.5 };
  const cut: WhatIf = { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" };
  const outcome = {
    whatIfs: [fall, cut].map((whatIf) => ({ whatIf, key: whatIfKey(whatIf), ok: true, counts: true, gaveWay: [] })),
    parts: [],
    reasons: [{ kind: "notCaught", event: 1 }],
  } as unknown as Outcome;
  const assessed = assessRig(rig);

  it("are of the what-if that is asked about, and of the worst where the verdict has it not", () => {
    expect(chanceChoices(assessed, outcome, whatIfKey(fall)).chosen.whatIf).toEqual(fall);
    expect(chanceChoices(assessed, outcome, "fall@0.123").chosen.whatIf).toEqual(cut);
    expect(chanceChoices(assessed, { ...outcome, reasons: [] }, undefined).chosen.whatIf).toEqual(fall);
  });

  it("are of some what-if even where none can be worked out", () => {
    const none = {
      ...outcome,
      reasons: [],
      whatIfs: [{ ...outcome.whatIfs[0]!, whatIf: { kind: "rescue", at: 0.5 } as WhatIf }],
    };
    const { open, chosen } = chanceChoices(assessed, none, undefined);
    expect(open).toEqual([]);
    expect(chosen).toBe(none.whatIfs[0]);
  });
});
