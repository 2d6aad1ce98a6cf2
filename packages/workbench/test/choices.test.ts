/** What can be chosen before a sweep, or before chances, is worked out. */
import { readRig } from "@secondline/rig";
import { assessRig, type Outcome, type WhatIf, whatIfKey } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { chanceChoices } from "../src/chances/chanceChoices.ts";
import { limitKind, type SweepNumber, whatsOf, whatText, withNumber } from "../src/index.ts";
import { demoDocument } from "./demoDocument.ts";

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
