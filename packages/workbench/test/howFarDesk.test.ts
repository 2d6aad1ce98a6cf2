import type { Progress, ServiceAnswer, SweepAnswer, SweepRequest } from "@secondline/runner";
import type { Swept } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { HowFarDesk } from "../src/index.ts";
import { demoDocument } from "./demoDocument.ts";
import { handSandbox } from "./handRunner.ts";

/** Answered by the test. */
function desk() {
  const { sandbox } = handSandbox(demoDocument());
  const asked: {
    request: SweepRequest;
    progress: (one: Progress) => void;
    answer: (one: ServiceAnswer<SweepAnswer>) => void;
  }[] = [];
  const cancelled: string[] = [];
  const runner = {
    sweep: (request: SweepRequest, progress: (one: Progress) => void = () => undefined) =>
      new Promise<ServiceAnswer<SweepAnswer>>((answer) => asked.push({ request, progress, answer })),
    async cancel(id: string) {
      cancelled.push(id);
    },
  };
  let count = 0;
  const made = new HowFarDesk(sandbox, runner, () => `${++count}`);
  /** The rigs of the range have been read, one after the other. */
  const ordered = async (number: number) => {
    while (asked.length < number) await new Promise((resolve) => setTimeout(resolve));
    return asked[number - 1]!;
  };
  return { made, sandbox, asked, cancelled, ordered };
}
const swept = { knobs: [], points: [], limits: [] } as unknown as Swept;
const found = { ok: true, value: { kind: "swept", swept } } as const;

describe("the desk of how far a number can go", () => {
  it("asks about the loosest backup with a range of its slack, and keeps the answer for the same question", async () => {
    const { made, asked, ordered } = desk();
    made.about(undefined, "loosest");
    expect(made.store.getState().asked.ranges).toMatchObject([{ name: "backup.slack" }]);
    const first = made.start();
    const { request, answer } = await ordered(1);
    expect(request.rigs).toHaveLength(7);
    expect(request.bad).toEqual([]);
    answer(found);
    expect(await first).toBe(true);
    expect(made.isStale()).toBe(false);
    made.ask({ points: "5" });
    expect(made.isStale()).toBe(true);
    expect(made.store.getState().preset).toBe("loosest");
    made.ask({ points: "" });
    expect(made.isStale()).toBe(false);
    expect(await made.start()).toBe(true);
    expect(asked).toHaveLength(1);
  });

  it("stops at once, and drops what comes late", async () => {
    const { made, cancelled, ordered } = desk();
    const answered = made.start();
    const { answer, progress } = await ordered(1);
    progress({ done: 0.5, made: 10, expected: 20 });
    expect(made.store.getState().work).toMatchObject({ kind: "busy", progress: { made: 10 } });
    made.stop();
    expect(made.store.getState().work).toEqual({ kind: "stopped" });
    expect(cancelled).toEqual(["1"]);
    answer(found);
    expect(await answered).toBe(false);
    expect(made.store.getState().found).toBeUndefined();
  });

  it("opens no value of a rig that was changed since: that would bring the old one back", async () => {
    const { made, sandbox, ordered } = desk();
    const answered = made.start();
    (await ordered(1)).answer(found);
    await answered;
    expect(made.canOpen()).toBe(true);
    sandbox.actions.edit("leash.length", "1.1 m", "leash");
    expect(made.canOpen()).toBe(false);
    expect(made.isStale()).toBe(true);
  });

  it("tells when too few values give a rig, and when no run gave numbers, of what was asked when it began", async () => {
    const { made, ordered } = desk();
    made.ask({ what: { kind: "height" } });
    const few = made.start();
    const { answer } = await ordered(1);
    made.ask({ what: { kind: "drop" } });
    answer({ ok: true, value: { kind: "fewPoints", points: 1, bad: [] } });
    expect(await few).toBe(false);
    expect(made.store.getState().nothing).toEqual({
      answer: { kind: "fewPoints", points: 1, bad: [] },
      what: { kind: "height" },
    });
    const none = made.start();
    (await ordered(2)).answer({ ok: true, value: { kind: "nothing" } });
    await none;
    expect(made.store.getState().nothing).toEqual({ answer: { kind: "nothing" }, what: { kind: "drop" } });
  });
});
