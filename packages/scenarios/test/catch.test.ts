import { startRun } from "@secondline/engine";
import { describe, expect, it } from "vitest";
import { executeRun, NO_DRAW, rigStrengths, type WhatIf } from "../src/index.ts";
import { CatchWatch } from "../src/run/catch.ts";
import { momentOfCatch } from "../src/run/runToEnd.ts";
import { defaultDuration, toProblem } from "../src/run/toProblem.ts";
import { demandStrengths } from "../src/strengths/demandStrengths.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const strengths = rigStrengths(testRig);
const holds = demandStrengths(testRig, strengths);
const ACCURACY = { accuracy: "quick" } as const;

describe("the moment of a catch", () => {
  it.each([0.1, 0.5, 0.85])("is when the leash pulls hardest in all of the fall, at %d of the line", (at) => {
    const whole = finish(
      executeRun(testRig, strengths, { event: { kind: "leashFall", at }, draw: NO_DRAW, ...ACCURACY }),
    );
    const event: WhatIf = { kind: "mainFails", at, cutAt: 1, walker: "caught" };
    const moment = finish(momentOfCatch(testRig, event, holds, ACCURACY));
    // The peak of the same signal through the same filter; only what the filter is fed after it ends elsewhere.
    expect(moment.ok && moment.known.catchTime).toBeCloseTo(whole.ok ? whole.catchTime : Number.NaN, 3);
  });

  it("is found without running the fall to its end, and not before the walker has come up again", () => {
    const usual = defaultDuration(testRig);
    const started = startRun(toProblem(testRig, { kind: "leashFall", at: 0.5 }, holds, { duration: usual }), ACCURACY);
    if (!started.ok) throw new Error(started.message);
    const { run } = started;
    const watch = new CatchWatch(run, { from: 0, usual, most: usual });
    while (run.advance(100) === "running" && !watch.over());
    expect(run.status).toBe("running");
    expect(run.time).toBeLessThan(0.5 * usual);
    expect(run.walkerHeight).toBeGreaterThan(run.lowest + 0.05);
  });

  it("is none of an event that is not in a catch", () => {
    const event: WhatIf = { kind: "mainFails", at: 0.5, cutAt: 1, walker: "hanging" };
    expect(finish(momentOfCatch(testRig, event, holds, ACCURACY))).toEqual({ ok: true, known: {} });
  });
});
