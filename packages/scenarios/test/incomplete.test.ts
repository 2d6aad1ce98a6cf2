/** What happens when the engine cannot be trusted: the failure is injected, for the engine is not meant to fail. */
import { beforeEach, describe, expect, it, vi } from "vitest";
import { assessRig, study, type WhatIf } from "../src/index.ts";
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
const run = (events = whatIfs) => finish(study(assessRig(testRig), { accuracy: "quick", whatIfs: events })).outcome;

describe("a what-if that fails its audit", () => {
  beforeEach(() => {
    failing.when = (name) => name.includes("fails");
  });

  it("is shown as failed, with the reason and without a number", () => {
    expect(run().whatIfs[1]).toEqual({
      whatIf: whatIfs[1],
      key: "fails@1,hanging@0.3",
      class: "afterFailure",
      counts: true,
      ok: false,
      trouble: { reason: "audit", detail: "energy does not balance: 12 J" },
      caughtBy: "nothing",
      gaveWay: [],
      runs: 0,
    });
  });

  it("leaves a verdict that is open and never sound, and is no fall that nothing caught", () => {
    const outcome = run();
    expect(outcome.search.gaps).toContainEqual({ kind: "failed", events: [1] });
    expect(outcome.verdict).toBe("open");
    expect(outcome.falls.notCaught).toEqual([]);
    expect(outcome.cautions).toContainEqual({ kind: "failedRuns", whatIfs: [1] });
  });

  it("is run again with half the step, and counts when that goes well", () => {
    failing.when = (name, stepShare) => name.includes("fails") && stepShare === undefined;
    expect(run().search.gaps.some(({ kind }) => kind === "failed")).toBe(false);
  });

  it("takes with it the catch that begins with the same fall", () => {
    failing.when = (name) => name.includes("fall@");
    const outcome = run([{ kind: "mainFails", at: 0.5, cutAt: 1, walker: "caught" }, whatIfs[1]!]);
    expect(outcome.whatIfs.map((one) => one.ok)).toEqual([false, true]);
    expect(outcome.whatIfs[0]!.trouble).toMatchObject({ reason: "before" });
  });
});

it("gives no verdict at all when nothing could be computed", () => {
  failing.when = () => true;
  expect(() => run()).toThrow(/No what-if could be computed reliably, so there is no verdict/);
});
