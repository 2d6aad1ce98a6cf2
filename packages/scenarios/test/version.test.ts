import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { inputHash, VERSION } from "../src/index.ts";

it("prints the version of the repository", () => {
  const root = JSON.parse(readFileSync(new URL("../../../package.json", import.meta.url), "utf8"));
  expect(VERSION).toBe(root.version);
});

it("gives a rig the same fingerprint however its keys are ordered, and another when a number changes", () => {
  expect(inputHash({ a: 1, b: [1, { c: 2, d: 3 }] })).toBe(inputHash({ b: [1, { d: 3, c: 2 }], a: 1 }));
  expect(inputHash({ a: 1 })).not.toBe(inputHash({ a: 1.0000001 }));
  expect(inputHash({ a: 1 })).toMatch(/^[0-9a-f]{64}$/);
});
