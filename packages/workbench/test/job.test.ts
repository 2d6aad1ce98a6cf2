import { beforeEach, describe, expect, it } from "vitest";
import { type Job, JobSlot, type StoppableTask, type TaskAnswer } from "../src/index.ts";

/** A task that the test answers by hand. */
function byHand(begun = 0) {
  const cancelled: string[] = [];
  let answer: (answer: TaskAnswer<string>) => void = () => undefined;
  let fail: (error: unknown) => void = () => undefined;
  let tell: (progress: number) => void = () => undefined;
  let goesOn = () => false;
  const task: StoppableTask<string, number> = {
    begun,
    run(told, on) {
      tell = told;
      goesOn = on;
      return new Promise((resolve, reject) => {
        answer = resolve;
        fail = reject;
      });
    },
    cancel: () => cancelled.push("cancelled"),
  };
  return {
    task,
    cancelled,
    done: (value: string) => answer({ ok: true, value }),
    not: (reason: "cancelled" | "failed", message = "") => answer({ ok: false, reason, message }),
    throws: (error: unknown) => fail(error),
    tell: (progress: number) => tell(progress),
    goesOn: () => goesOn(),
  };
}

let seen: Job<string, number>[];
let slot: JobSlot<string, number>;
const last = () => seen.at(-1);

beforeEach(() => {
  seen = [];
  slot = new JobSlot((job) => seen.push(job));
});

describe("a job", () => {
  it("is busy with its progress, then done with its value", async () => {
    const one = byHand();
    const answered = slot.run(one.task);
    one.tell(0.5);
    one.done("found");
    expect(await answered).toBe("found");
    expect(seen).toEqual([
      { kind: "busy", progress: 0 },
      { kind: "busy", progress: 0.5 },
      { kind: "done", value: "found" },
    ]);
    expect(one.cancelled).toEqual([]);
    expect(slot.isBusy).toBe(false);
  });

  it("stopped while busy cancels its task once, and drops the value and the progress that come late", async () => {
    const one = byHand();
    const answered = slot.run(one.task);
    slot.stop();
    slot.stop();
    expect(one.cancelled).toHaveLength(1);
    expect(one.goesOn()).toBe(false);
    one.tell(0.9);
    one.done("late");
    expect(await answered).toBeUndefined();
    expect(last()).toEqual({ kind: "stopped" });
  });

  it("that fails after it was stopped stays stopped", async () => {
    const [answer, error] = [byHand(), byHand()];
    const first = slot.run(answer.task);
    slot.stop();
    answer.not("failed", "too late");
    await first;
    expect(last()).toEqual({ kind: "stopped" });
    const second = slot.run(error.task);
    slot.stop();
    error.throws(new Error("too late"));
    expect(await second).toBeUndefined();
    expect(last()).toEqual({ kind: "stopped" });
  });

  it("started over while busy cancels the first task and heeds the second one only", async () => {
    const [one, two] = [byHand(), byHand(0.1)];
    const first = slot.run(one.task);
    const second = slot.run(two.task);
    expect(one.cancelled).toHaveLength(1);
    expect(two.cancelled).toEqual([]);
    one.tell(0.9);
    one.done("old");
    expect(await first).toBeUndefined();
    expect(last()).toEqual({ kind: "busy", progress: 0.1 });
    two.done("new");
    expect(await second).toBe("new");
    expect(seen.map(({ kind }) => kind)).toEqual(["busy", "busy", "done"]);
  });

  it("says why it failed, by an answer or by an error", async () => {
    const [one, two] = [byHand(), byHand()];
    const first = slot.run(one.task);
    one.not("failed", "too few runs");
    expect(await first).toBeUndefined();
    expect(last()).toEqual({ kind: "failed", message: "too few runs" });
    const second = slot.run(two.task);
    two.throws(new Error("the thread died"));
    expect(await second).toBeUndefined();
    expect(last()).toEqual({ kind: "failed", message: "the thread died" });
    expect(slot.isBusy).toBe(false);
  });

  it("that somebody else cancelled is stopped, not failed", async () => {
    const one = byHand();
    const answered = slot.run(one.task);
    one.not("cancelled", "the page goes");
    await answered;
    expect(last()).toEqual({ kind: "stopped" });
  });

  it("can wait for a change to settle, which ends the one before", async () => {
    const one = byHand();
    const answered = slot.run(one.task);
    slot.rest("waiting");
    expect(one.cancelled).toHaveLength(1);
    one.done("of the state before");
    expect(await answered).toBeUndefined();
    expect(last()).toEqual({ kind: "waiting" });
    slot.stop();
    expect(last()).toEqual({ kind: "waiting" });
  });

  it("runs again after every way of ending", async () => {
    const one = byHand();
    const first = slot.run(one.task);
    one.not("failed", "no");
    await first;
    for (const end of ["idle", "waiting", "stopped"] as const) {
      slot.rest(end);
      const next = byHand();
      const answered = slot.run(next.task);
      next.done(end);
      expect(await answered).toBe(end);
    }
  });
});
