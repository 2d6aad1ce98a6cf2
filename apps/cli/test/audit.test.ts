/** What the command does when a run cannot be trusted; the failing run is put in its place, for none is known that fails. */
import type { Outcome } from "@secondline/scenarios";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { check } from "../src/commands/check.ts";
import { demo } from "./support/command.ts";

const failed = {
  rigName: "rig",
  accuracy: "quick",
  requiredFactor: 2,
  whatIfs: [
    { title: "Leash fall in the middle", ok: false, problem: "energy does not balance", broke: [], caught: false },
  ],
  parts: [],
  likelyFirst: [],
  verdict: "thin",
  incomplete: [0],
  sentence: "Incomplete: one what-if could not be computed.",
  weakestBases: [],
  cautions: ["The verdict is incomplete."],
  statics: { unloadedTension: 1, unloadedSag: 1, standingTension: 1, standingSag: 1 },
} as unknown as Outcome;

vi.mock(import("../src/study.ts"), () => ({ runStudy: async () => failed }));

let [out, err] = ["", ""];
beforeEach(() => {
  [out, err] = ["", ""];
  vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    out += text;
    return true;
  });
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    err += text;
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  process.exitCode = undefined;
});

it.each([false, true])("leaves with 3 when a run failed its audit, with --require or without", async (require) => {
  await check(demo("sound-rig.json"), { whatIf: [], set: "quick", accuracy: "quick", require });
  expect(process.exitCode).toBe(3);
  expect(err).toBe("Leash fall in the middle: energy does not balance\n");
  expect(out).toMatch(/could not be computed: energy does\s+(–\s+)+not balance/);
  expect(out).toContain("The verdict is incomplete.");
});
