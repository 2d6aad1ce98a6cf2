import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { executeRun, GENERATION, inputHash, NO_DRAW, rigStrengths, VERSION, type WhatIf } from "../src/index.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

it("prints the version of the repository", () => {
  const root = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8"));
  expect(VERSION).toBe(root.version);
});

it("gives a rig the same fingerprint however its keys are ordered, and another when a number changes", () => {
  expect(inputHash({ a: 1, b: [1, { c: 2, d: 3 }] })).toBe(inputHash({ b: [1, { d: 3, c: 2 }], a: 1 }));
  expect(inputHash({ a: 1 })).not.toBe(inputHash({ a: 1.0000001 }));
  expect(inputHash({ a: 1 })).toMatch(/^[0-9a-f]{64}$/);
});

it("has another generation when a run comes out otherwise, so that nothing kept by the old one is shown as new", () => {
  const strengths = rigStrengths(testRig);
  const events: readonly WhatIf[] = [
    { kind: "leashFall", at: 0.5 },
    { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" },
    { kind: "mainFails", at: 0.2, cutAt: 0, walker: "standing" },
  ];
  const facts = events.map((event) =>
    finish(executeRun(testRig, strengths, { event, draw: NO_DRAW, accuracy: "quick" })),
  );
  const central = strengths.parts.map(({ id, strength }) => [id, Number(strength.toPrecision(9))]);
  // Where this fails: raise GENERATION by one, and write down the new pair.
  expect({ generation: GENERATION, hash: inputHash({ facts, central }).slice(0, 16) }).toEqual({
    generation: 12,
    hash: "febc128ba649f70d",
  });
});
