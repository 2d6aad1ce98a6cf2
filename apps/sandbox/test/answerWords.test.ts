import type { WhatIfOutcome } from "@secondline/scenarios";
import { expect, it } from "vitest";
import { answerWords as wordsOf } from "../src/question/answerWords.ts";
import { demoDocument, read } from "./demoDocument.ts";

const demo = read(demoDocument());
if (!demo.ok) throw new Error("the demo rig has faults");
const { rig } = demo;
const answerWords = (outcome: WhatIfOutcome) => wordsOf(outcome, rig);
const tape = `connection.${rig.backup!.connections.findIndex(({ kind }) => kind === "tape")}`;

const fall: WhatIfOutcome = {
  whatIf: { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" },
  title: "",
  ok: true,
  caught: true,
  drop: 4.52,
  peaks: { leash: 3340, mainA: 0, mainB: 0, backupA: 0, backupB: 0 },
  broke: [],
};

it("says who caught the walker, how far down and how hard", () => {
  expect(answerWords(fall)).toBe("The backup caught you 4.52 m down. Hardest pull on your harness: 3.3 kN.");
});

it("names what parted, the first one with its time", () => {
  const broke = [
    { part: "leash", time: 1.21 },
    { part: "connection.0", time: 1.3 },
    { part: "connection.1", time: 1.4 },
    { part: tape, time: 0.9 },
  ];
  expect(answerWords({ ...fall, caught: false, broke })).toContain(
    "Nothing caught you. Hardest pull on your harness: 3.3 kN. The leash parted 1.21 s in, then a connection.",
  );
});

it("says it when the ground comes first", () => {
  expect(answerWords({ ...fall, caught: false, groundSpeed: 12.3 })).toContain("You hit the ground at 12 m/s.");
});

it("gives no number of a fall that was not computed reliably", () => {
  const words = answerWords({ ...fall, ok: false, problem: "The energy audit failed." });
  expect(words).toBe("This fall could not be computed reliably: The energy audit failed. Do not use any number of it.");
});
