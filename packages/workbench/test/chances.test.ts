import type { ChancesRequest, Progress, ServiceAnswer } from "@secondline/runner";
import type { Assessed, Chances, WhatIf } from "@secondline/scenarios";
import { beforeEach, describe, expect, it } from "vitest";
import { readSpreads } from "../src/chances/spreads.ts";
import { type ChancesDesk, createChancesDesk, readSpread } from "../src/index.ts";

/** A runner whose answers the test gives by hand. */
class HandRunner {
  readonly asked: ChancesRequest[] = [];
  readonly cancelled: string[] = [];
  progress: (progress: Progress) => void = () => undefined;
  answer: (answer: ServiceAnswer<Chances>) => void = () => undefined;
  chances(request: ChancesRequest, progress: (progress: Progress) => void = () => undefined) {
    this.asked.push(request);
    this.progress = progress;
    return new Promise<ServiceAnswer<Chances>>((answer) => {
      this.answer = answer;
    });
  }
  async cancel(id: string) {
    this.cancelled.push(id);
  }
}

const assessed = { rig: { name: "a rig" } } as Assessed;
const whatIf: WhatIf = { kind: "leashFall", at: 0.5 };
const chances = { rigName: "a rig" } as Chances;
let runner: HandRunner;
let desk: ChancesDesk;
const state = () => desk.store.getState();

beforeEach(() => {
  let count = 0;
  runner = new HandRunner();
  desk = createChancesDesk(runner, () => `${++count}`);
});

describe("the chances of a rig", () => {
  it("are kept with the state and the spreads they belong to", async () => {
    desk.type("mass", "5 %");
    const { spreads } = state();
    const found = desk.workOut(assessed, "state 3", whatIf);
    runner.progress({ done: 0.5, doing: whatIf });
    expect(state().work).toMatchObject({ kind: "busy", progress: { done: 0.5, doing: whatIf } });
    runner.answer({ ok: true, value: chances });
    expect(await found).toBe(chances);
    expect(runner.asked[0]).toMatchObject({ assessed, whatIf, spreads: { mass: 0.05 } });
    expect(state()).toMatchObject({ work: { kind: "done" }, found: { chances, key: "state 3" } });
    expect(state().found!.spreads).toBe(spreads);
  });

  it("are not asked for while a spread cannot be read", async () => {
    desk.type("damping", "a lot");
    expect(await desk.workOut(assessed, "state 1", whatIf)).toBeUndefined();
    expect(runner.asked).toEqual([]);
  });

  it("can be stopped, and a late answer is dropped", async () => {
    const found = desk.workOut(assessed, "state 1", whatIf);
    desk.stop();
    expect(runner.cancelled).toEqual(["1"]);
    runner.answer({ ok: true, value: chances });
    expect(await found).toBeUndefined();
    expect(state()).toMatchObject({ work: { kind: "stopped" }, found: undefined });
  });

  it("leave what was known in place when a new run fails, and say why", async () => {
    const first = desk.workOut(assessed, "state 1", whatIf);
    runner.answer({ ok: true, value: chances });
    await first;
    const second = desk.workOut(assessed, "state 2", whatIf);
    runner.answer({ ok: false, reason: "failed", code: "failed", message: "too few runs" });
    expect(await second).toBeUndefined();
    expect(state()).toMatchObject({ work: { kind: "failed", message: "too few runs" }, found: { key: "state 1" } });
  });
});

describe("spreads as people type them", () => {
  it.each([
    ["10", 0.1],
    ["7,5 %", 0.075],
    [" 0% ", 0],
    ["101", undefined],
    ["-3", undefined],
    ["", undefined],
    ["many", undefined],
  ])("%j is %s", (text, spread) => {
    expect(readSpread(text)).toBe(spread);
  });

  it("are all read, or none", () => {
    expect(readSpreads({ mass: "10", slack: "5" })).toEqual({ ok: true, spreads: { mass: 0.1, slack: 0.05 } });
    expect(readSpreads({ mass: "10", slack: "?" })).toEqual({ ok: false });
  });
});
