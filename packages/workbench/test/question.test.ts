/** The question of a what-if: a sentence whose blanks are filled in. */
import { readRig } from "@secondline/rig";
import type { WhatIf } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { fallTrouble, type QuestionPart, questionParts } from "../src/index.ts";
import { demoDocument } from "./demoDocument.ts";

const reading = readRig(demoDocument());
if (!reading.ok) throw new Error(JSON.stringify(reading.issues[0]));
const { rig } = reading;

const FALL: WhatIf = { kind: "leashFall", at: 0.5 };
const CUT: WhatIf = { kind: "mainFails", at: 0.4, cutAt: 0, walker: "standing" };
const LEG: WhatIf = { kind: "legFails", at: 0.4, anchor: "B", leg: 1, walker: "caught" };
const RESCUE: WhatIf = { kind: "rescue", at: 0.5 };

function blank<K extends "choice" | "place">(whatIf: WhatIf, kind: K, label: RegExp) {
  const found = questionParts(whatIf, rig).find(
    (part): part is Extract<QuestionPart, { kind: K }> => part.kind === kind && label.test(part.label),
  );
  if (!found) throw new Error(`no blank ${label} in the question of ${whatIf.kind}`);
  return found;
}

describe("the question", () => {
  it("says words and blanks in the order in which they are read", () => {
    const read = questionParts(CUT, rig).map((part) => (part.kind === "words" ? part.text : `(${part.kind})`));
    expect(read.join(" ")).toBe("What if (choice) at (place) while the walker (choice) at (place)");
  });

  it("has the answer that is given now in every choice, among the answers that can be given", () => {
    for (const whatIf of [FALL, CUT, LEG, RESCUE])
      for (const part of questionParts(whatIf, rig))
        if (part.kind === "choice") expect(part.options.map(({ value }) => value)).toContain(part.value);
  });

  it("asks of another kind of event at the same place", () => {
    const kinds = blank(CUT, "choice", /What happens/);
    expect(kinds.choose("leashFall")).toEqual({ kind: "leashFall", at: 0.4 });
    expect(kinds.choose("mainFails")).toEqual(CUT);
  });

  it("offers only answers of its own: whatever else is said changes nothing", () => {
    expect(blank(LEG, "choice", /What the walker does/).options.map(({ value }) => value)).toEqual([
      "hanging",
      "caught",
    ]);
    expect(blank(LEG, "choice", /What the walker does/).choose("standing")).toEqual(LEG);
    expect(blank(LEG, "choice", /leg/i).choose("A0")).toEqual({ ...LEG, anchor: "A", leg: 0 });
  });

  it("moves the walker, and the place where the main line fails, each by itself", () => {
    expect(blank(CUT, "place", /walker/).move(0.25)).toEqual({ ...CUT, at: 0.25 });
    expect(blank(CUT, "place", /main line/).move(1)).toEqual({ ...CUT, cutAt: 1 });
    expect(blank(CUT, "place", /main line/).ends).toBe(true);
    expect(blank(FALL, "place", /walker/).ends).toBe(false);
  });

  it("tells during what a part gives way, which no one can choose", () => {
    const gives: WhatIf = { kind: "givesWay", part: "leash", at: 0.5, during: FALL } as WhatIf;
    const parts = questionParts(gives, rig);
    expect(parts.filter(({ kind }) => kind === "place")).toEqual([]);
    expect(parts.at(-1)).toMatchObject({ kind: "words", text: expect.stringMatching(/^in: leash fall/) });
  });
});

it("what came in the way of a fall says whether the picture is of the run before, and nothing else is trouble", () => {
  const failed = { kind: "failed", message: "out of memory" } as const;
  expect(fallTrouble(failed, false)).toMatchObject({ isAlert: true, text: expect.stringContaining("out of memory.") });
  expect(fallTrouble(failed, true)!.text).not.toBe(fallTrouble(failed, false)!.text);
  expect(fallTrouble({ kind: "stopped" }, true)).toMatchObject({ isAlert: false });
  for (const kind of ["idle", "waiting"] as const) expect(fallTrouble({ kind }, true)).toBeUndefined();
});
