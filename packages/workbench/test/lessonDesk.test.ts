import { InProcessRunner, type ServiceAnswer } from "@secondline/runner";
import type { WhatIfRun } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import {
  createLessonDesk,
  keepOrTell,
  LESSONS,
  lastTryWords,
  lessonRuns,
  readGuess,
  reasonWords,
  type Try,
} from "../src/lessons/index.ts";
import { read } from "./demoDocument.ts";

const lesson = LESSONS.find(({ id }) => id === "connection")!;
const GUESS = { predicted: 4, reason: 1, ownReason: "" } as const;

function desk(runner: object) {
  const tries: Try[] = [];
  const said: string[] = [];
  let id = 0;
  const services = {
    runner: runner as InProcessRunner,
    read,
    newId: () => `${++id}`,
    now: () => 7,
    onTry: (one: Try) => void tries.push(one),
    announce: (text: string) => void said.push(text),
  };
  return { tries, said, desk: createLessonDesk(lesson, services) };
}

/** A runner that never answers by itself. */
function waitingRunner() {
  const cancelled: string[] = [];
  const answers: ((answer: ServiceAnswer<WhatIfRun>) => void)[] = [];
  const run = () => new Promise<ServiceAnswer<WhatIfRun>>((answer) => answers.push(answer));
  const cancel = async (id: string) => void cancelled.push(id);
  return { run, cancel, cancelled, answers };
}

describe("a lesson", () => {
  it("computes what is given at once, and shows no result before something was predicted", async () => {
    const { desk: one, tries, said } = desk(new InProcessRunner());
    one.begin();
    await expect.poll(() => one.store.getState().before.kind, { timeout: 60_000 }).toBe("done");
    expect(lessonRuns(one.store.getState()).given).toBeDefined();
    expect(lessonRuns(one.store.getState()).result).toBeUndefined();
    await one.run(GUESS);
    expect(lessonRuns(one.store.getState()).result).toBeDefined();
    expect(tries).toEqual([{ predicted: 4, reason: 1, result: expect.any(Number), when: 7 }]);
    expect(said).toHaveLength(1);
    one.again();
    expect(lessonRuns(one.store.getState()).result).toBeUndefined();
  }, 120_000);

  it("never shows what came of one prediction as the answer to another", () => {
    const runner = waitingRunner();
    const { desk: one } = desk(runner);
    const seen: boolean[] = [];
    one.store.subscribe((state) => void seen.push(lessonRuns(state).result !== undefined));
    void one.run(GUESS);
    one.again();
    void one.run({ ...GUESS, predicted: 5 });
    expect(seen).not.toContain(true);
    expect(one.store.getState()).toMatchObject({ after: { kind: "busy" }, guess: { predicted: 5 } });
  });

  it("can be stopped and says so; a run that is left behind is cancelled", () => {
    const runner = waitingRunner();
    const { desk: one } = desk(runner);
    one.begin();
    one.stop("before");
    expect(one.store.getState().before.kind).toBe("stopped");
    expect(runner.cancelled).toContain("1.fall");
    one.begin();
    one.leave();
    expect(runner.cancelled).toContain("2.fall");
    expect(one.store.getState().before.kind).toBe("idle");
  });

  it("that fails keeps no try", async () => {
    const runner = waitingRunner();
    const { desk: one, tries } = desk(runner);
    const done = one.run(GUESS);
    runner.answers[0]!({ ok: false, reason: "failed", code: "failed", message: "no thread" });
    await done;
    expect(one.store.getState().after).toEqual({ kind: "failed", message: "no thread" });
    expect(tries).toEqual([]);
  });
});

describe("a prediction", () => {
  it("is a number and a reason, chosen or of the learner's own", () => {
    expect(readGuess(undefined, 1, "").ok).toBe(false);
    expect(readGuess(4, undefined, "  ").ok).toBe(false);
    expect(readGuess(4, undefined, " mine ")).toEqual({
      ok: true,
      guess: { predicted: 4, reason: undefined, ownReason: "mine" },
    });
    expect(readGuess(4, 2, "")).toEqual({ ok: true, guess: { predicted: 4, reason: 2, ownReason: "" } });
  });

  it("is told with both reasons where both were given", () => {
    expect(reasonWords(lesson, { predicted: 4, reason: 1, ownReason: "mine" })).toMatch(/.+ “mine”$/);
    expect(reasonWords(lesson, { predicted: 4, reason: undefined, ownReason: "mine" })).toBe("“mine”");
  });

  it("is listed with what came of it, once it was tried to the end", () => {
    const words = (tries: readonly Try[]) => lastTryWords({ connection: tries }, "connection", lesson.scale);
    expect(words([])).toBe(words([{ predicted: 4, when: 7 }]));
    expect(words([{ predicted: 4, result: 5, when: 7 }])).toMatch(/4.*5/);
  });

  it("counts until the page is closed where it cannot be kept, and that is told", () => {
    const troubles: unknown[] = [];
    const full = {
      getItem: () => null,
      setItem: () => {
        throw new Error("full");
      },
      removeItem: () => undefined,
    };
    const one: Try = { predicted: 4, when: 7 };
    expect(keepOrTell(full, {}, "connection", one, (error) => void troubles.push(error))).toEqual({
      connection: [one],
    });
    expect(troubles).toHaveLength(1);
  });
});
