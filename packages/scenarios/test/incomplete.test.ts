/** What happens when the engine cannot be trusted: the failure is injected, for the engine is not meant to fail. */
import { beforeEach, describe, expect, it, vi } from "vitest";
import { report, study, type WhatIf } from "../src/index.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const failing = vi.hoisted(() => ({ when: (_name: string, _stepShare?: number): boolean => false }));
vi.mock(import("@secondline/engine"), async (original) => {
  const engine = await original();
  return {
    ...engine,
    startRun: (problem, options) =>
      failing.when(problem.name, options?.stepShare)
        ? { ok: false, reason: "audit", message: "energy does not balance: 12 J" }
        : engine.startRun(problem, options),
  };
});

const whatIfs: WhatIf[] = [
  { kind: "leashFall", at: 0.5 },
  { kind: "mainFails", at: 0.3, cutAt: 1, walker: "hanging" },
];
const run = () => finish(study(testRig, { accuracy: "quick", whatIfs, traces: true }));

describe("a what-if that fails its audit", () => {
  beforeEach(() => {
    failing.when = (name) => name.includes("fails");
  });

  it("is shown as failed, with the reason and without a number", () => {
    const failed = run().whatIfs[1]!;
    expect(failed).toEqual({
      whatIf: whatIfs[1],
      title: "Main line fails at anchor B, walker hanging 18 m from anchor A",
      ok: false,
      problem: "energy does not balance: 12 J",
      broke: [],
      caught: false,
    });
  });

  it("leaves a verdict that is incomplete and never sound", () => {
    const outcome = run();
    expect(outcome.incomplete).toEqual([1]);
    expect(outcome.verdict).not.toBe("holds");
    expect(outcome.sentence).toContain("Incomplete: one what-if could not be computed.");
    expect(outcome.cautions.join(" ")).toContain("The verdict is incomplete");
  });

  it("is run again with half the step, and counts when that goes well", () => {
    failing.when = (name, stepShare) => name.includes("fails") && stepShare === undefined;
    expect(run().incomplete).toEqual([]);
  });

  it("says that only some what-ifs were run, on a coarse mesh", () => {
    const { set, cautions } = run();
    expect(set).toMatchObject({ kind: "chosen", run: 2 });
    expect(cautions.join(" ")).toMatch(/Not every what-if was run: 2 here.*coarse mesh/);
  });

  it("is printed in the report", () => {
    expect(report(run(), { rig: testRig, date: "2026-07-01" })).toContain(
      "could not be computed: energy does not balance: 12 J",
    );
  });

  it("takes with it the catch that begins with the same fall", () => {
    failing.when = (name) => name.includes("Leash fall");
    const outcome = finish(
      study(testRig, {
        accuracy: "quick",
        whatIfs: [{ kind: "mainFails", at: 0.5, cutAt: 1, walker: "caught" }, whatIfs[1]!],
      }),
    );
    expect(outcome.whatIfs.map((one) => one.ok)).toEqual([false, true]);
    expect(outcome.whatIfs[0]!.problem).toContain("The fall before it failed");
  });
});

it("gives no verdict at all when nothing could be computed", () => {
  failing.when = () => true;
  expect(run).toThrow(/No what-if could be computed reliably, so there is no verdict/);
});
