import { assessRig, chances, type SearchResult, type WhatIf } from "@secondline/scenarios";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { memoryResults, PoolRunner, type Progress, type ServiceAnswer, type SpawnWorker } from "../src/index.ts";
import { nodeWorkers } from "../src/node.ts";
import { counted } from "./support/countedWorkers.ts";
import { DEADLY, STUCK } from "./support/faultyEvents.ts";
import { bundleWorker } from "./support/nodeWorker.ts";
import { assessed } from "./support/rig.ts";

let real: SpawnWorker;
let faulty: SpawnWorker;
beforeAll(async () => {
  real = nodeWorkers(await bundleWorker("poolWorker"));
  faulty = nodeWorkers(await bundleWorker("faultyWorker"));
});

let runners: PoolRunner[] = [];
afterEach(() => {
  for (const runner of runners) runner.dispose();
  runners = [];
});
function pooled(jobs: number, spawn = real, results = memoryResults()): PoolRunner {
  const runner = new PoolRunner({ spawn, jobs, results });
  runners.push(runner);
  return runner;
}

const fall = (at: number): WhatIf => ({ kind: "leashFall", at });
const few: readonly WhatIf[] = [
  fall(0.5),
  { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" },
  { kind: "mainFails", at: 0.5, cutAt: 0, walker: "caught" },
  { kind: "legFails", at: 0.5, anchor: "A", leg: 0, walker: "caught" },
];
const asked = { id: "study", assessed, accuracy: "quick" } as const;
const value = (answer: ServiceAnswer<SearchResult>): SearchResult => {
  if (!answer.ok) throw new Error(answer.message);
  return answer.value;
};

describe("chances by a pool", () => {
  // In a catch: every draw has a fall before it, which is part of its run.
  const spreads = { place: 0, pretension: 0, stiffness: 0, backupStiffness: 0, damping: 0, slack: 0, friction: 0 };
  const options = { whatIf: few[2]!, runs: 16, accuracy: "quick", spreads } as const;
  const question = { id: "chances", assessed, ...options };

  it("are the same to the bit with 1 and 2 workers, and in one thread; no run is made twice", async () => {
    const heard: number[] = [];
    const { counts, spawn } = counted(real);
    const runner = pooled(2, spawn);
    const two = await runner.chances(question, ({ done }) => heard.push(done));
    expect(two.ok && two.value.runs.done).toBe(16);
    expect(counts).toMatchObject({ spawned: 2, task: 16 });
    await runner.chances(question, ({ step }) => {
      if (step) void runner.cancel("chances");
    });
    expect(counts.task).toBe(16);
    expect([...heard].sort((a, b) => a - b)).toEqual(heard);
    expect(heard.at(-1)).toBeLessThanOrEqual(1);
    expect(await pooled(1).chances(question)).toStrictEqual(two);
    const work = chances(assessed, options);
    let step = work.next();
    while (!step.done) step = work.next();
    expect(two.ok && two.value).toStrictEqual(step.value);
  }, 120_000);
});

describe("a study by a pool", () => {
  it("gives the same answer to the bit with 1, 2 and 4 workers", async () => {
    const [one, two, four] = [
      await pooled(1).study({ ...asked, size: "quick" }),
      await pooled(2).study({ ...asked, size: "quick" }),
      await pooled(4).study({ ...asked, size: "quick" }),
    ].map(value);
    expect(one!.outcome.search.runs).toBeGreaterThan(10);
    expect(two).toStrictEqual(one);
    expect(four).toStrictEqual(one);
  }, 120_000);

  it("sends the rig to a worker once, and its runs one by one", async () => {
    const { counts, spawn } = counted(real);
    const runner = pooled(2, spawn);
    const { outcome } = value(await runner.study({ ...asked, whatIfs: few }));
    expect(counts).toMatchObject({ spawned: 2, assessed: 2, task: outcome.search.runs });
  });

  it("tells its progress, which never goes back, and its result so far", async () => {
    const heard: Progress[] = [];
    // What gives way in a fall is run after that fall: something is known by then.
    const whatIfs: readonly WhatIf[] = [
      ...few,
      { kind: "givesWay", at: 0.5, part: "endA", during: { kind: "leashFall", at: 0.5 } },
    ];
    await pooled(2).study({ ...asked, whatIfs, tellSoFar: true }, (one) => heard.push(one));
    const done = heard.map((one) => one.done);
    expect([...done].sort((a, b) => a - b)).toEqual(done);
    expect(done.at(-1)).toBeLessThanOrEqual(1);
    expect(heard.some(({ doing }) => doing?.kind === "mainFails")).toBe(true);
    const known = heard.flatMap(({ soFar }) => soFar ?? []);
    expect(known.length).toBeGreaterThan(0);
    for (const { verdict, search } of known) {
      expect(verdict).not.toBe("holds");
      expect(search.complete).toBe(false);
    }
  });

  it("loses nothing when a worker dies: another makes its run", async () => {
    const { counts, spawn } = counted((listener) => (counts.spawned === 1 ? faulty : real)(listener));
    const whatIfs = [fall(DEADLY), fall(0.5)];
    const there = value(await pooled(1, spawn).study({ ...asked, whatIfs }));
    expect(counts).toMatchObject({ spawned: 2, task: 3 });
    expect(there).toStrictEqual(value(await pooled(1).study({ ...asked, whatIfs })));
  });

  it("gives up a run that kills every worker, goes on with the others, and does not keep it", async () => {
    const results = memoryResults();
    const whatIfs = [fall(DEADLY), fall(0.5)];
    const { counts, spawn } = counted(faulty);
    const runner = pooled(2, spawn, results);
    const { outcome } = value(await runner.study({ ...asked, whatIfs }));
    expect(outcome.whatIfs.map(({ ok }) => ok)).toEqual([false, true]);
    expect(counts.task).toBe(4);
    await runner.study({ ...asked, whatIfs });
    expect(counts.task).toBe(7);
    expect(outcome.search.gaps).toContainEqual({ kind: "failed", events: [0] });
    const again = value(await pooled(2, real, results).study({ ...asked, whatIfs }));
    expect(again.outcome.whatIfs.map(({ ok }) => ok)).toEqual([true, true]);
  });

  it("says so when no worker can be made", async () => {
    const none = pooled(2, () => {
      throw new Error("workers are not allowed here");
    });
    expect(await none.study({ ...asked, whatIfs: few })).toEqual({
      ok: false,
      reason: "failed",
      code: "noWorker",
      message: "workers are not allowed here",
    });
  });
});

describe("cancel and pause", () => {
  it("answers a cancel at once, hears nothing more of it, and goes on with the next request", async () => {
    const runner = pooled(2);
    let heard = 0;
    let answer: Promise<ServiceAnswer<SearchResult>> | undefined;
    await new Promise<void>((begun) => {
      answer = runner.study({ ...asked, accuracy: "fine" }, () => {
        heard++;
        begun();
      });
    });
    await runner.cancel("study");
    const before = heard;
    expect(await answer).toMatchObject({ ok: false, reason: "cancelled", code: "cancelled" });
    await expect.poll(() => runner.state.busy).toBe(0);
    expect(heard).toBe(before);
    expect(value(await runner.study({ ...asked, whatIfs: few })).outcome.search.runs).toBe(4);
  });

  it("replaces a worker that does not hear the cancel", async () => {
    const { counts, spawn } = counted((listener) => (counts.spawned === 1 ? faulty : real)(listener));
    const runner = pooled(1, spawn);
    const stuck = runner.study({ ...asked, whatIfs: [fall(STUCK)] });
    await expect.poll(() => counts.task).toBe(1);
    await runner.cancel("study");
    expect(await stuck).toMatchObject({ reason: "cancelled" });
    expect(value(await runner.study({ ...asked, whatIfs: [fall(0.5)] })).outcome.whatIfs[0]!.ok).toBe(true);
    expect(counts).toMatchObject({ spawned: 2, terminated: 1 });
  });

  it("lets a new request under the same id take the place of the old one", async () => {
    const runner = pooled(2);
    const old = runner.study({ ...asked, accuracy: "fine" });
    const fresh = runner.study({ ...asked, whatIfs: [fall(0.5)] });
    expect(await old).toMatchObject({ reason: "cancelled" });
    expect(await fresh).toMatchObject({ ok: true });
  });

  it("begins no run while it is paused, and ends as if it had not been", async () => {
    const { counts, spawn } = counted(real);
    const runner = pooled(1, spawn);
    const answer = runner.study({ ...asked, whatIfs: few });
    await runner.pause("study");
    await runner.run({ id: "fall", assessed, whatIf: fall(0.5), accuracy: "quick", duration: 1 });
    expect(counts.task).toBe(1);
    await runner.resume("study");
    expect(value(await answer)).toStrictEqual(value(await pooled(1).study({ ...asked, whatIfs: few })));
  });

  it("runs the what-if that the reader looks at before the runs of a study", async () => {
    const runner = pooled(1);
    const ended: string[] = [];
    const study = runner.study({ ...asked, whatIfs: few }).then(() => ended.push("study"));
    await runner.run({ id: "fall", assessed, whatIf: fall(0.5), accuracy: "quick", duration: 1 });
    ended.push("run");
    await study;
    expect(ended).toEqual(["run", "study"]);
  });

  it("answers pending requests when it is disposed of", async () => {
    const runner = pooled(2);
    const answer = runner.study({ ...asked, accuracy: "fine" });
    await expect.poll(() => runner.state.busy).toBe(2);
    runner.dispose();
    expect(await answer).toMatchObject({ reason: "cancelled" });
    expect(runner.state).toEqual({ workers: 0, busy: 0, open: 0 });
  });

  it("makes fewer runs at a time when it is told to", async () => {
    const runner = pooled(2);
    const answer = runner.study({ ...asked, whatIfs: few });
    await expect.poll(() => runner.state.busy).toBe(2);
    await runner.setJobs(1);
    expect(await answer).toMatchObject({ ok: true });
    expect(runner.state.workers).toBe(1);
  });
});

describe("results that are kept", () => {
  it("answer a study that is asked for again without a run, even by another runner", async () => {
    const results = memoryResults();
    const first = value(await pooled(2, real, results).study({ ...asked, whatIfs: few }));
    const { counts, spawn } = counted(real);
    const again = value(await pooled(2, spawn, results).study({ ...asked, whatIfs: few }));
    expect(counts).toMatchObject({ spawned: 0, task: 0 });
    expect(again).toStrictEqual(first);
  });

  it("are the same when a value is confirmed: the verdict is told anew, nothing is run", async () => {
    const results = memoryResults();
    const marked = assessRig({ ...assessed.rig, unconfirmed: ["span"] });
    const first = value(await pooled(2, real, results).study({ ...asked, assessed: marked, whatIfs: few }));
    const { counts, spawn } = counted(real);
    const again = value(await pooled(2, spawn, results).study({ ...asked, whatIfs: few }));
    expect(counts).toMatchObject({ task: 0 });
    const said = (found: typeof first) => found.outcome.reasons.some(({ kind }) => kind === "unconfirmed");
    expect([said(first), said(again)]).toEqual([true, false]);
  });

  it("serve another search for as far as it asks for the same runs", async () => {
    const { counts, spawn } = counted(real);
    const runner = pooled(2, spawn);
    await runner.study({ ...asked, whatIfs: few.slice(0, 3) });
    const before = counts.task;
    await runner.study({ ...asked, whatIfs: few });
    expect(counts.task - before).toBe(1);
  });

  it("are not taken for those of a rig that differs", async () => {
    const { counts, spawn } = counted(real);
    const runner = pooled(1, spawn);
    await runner.study({ ...asked, whatIfs: [fall(0.5)] });
    const other = { ...assessed, rig: { ...assessed.rig, span: 61 }, hash: "another", runsHash: "another" };
    await runner.study({ ...asked, assessed: other, whatIfs: [fall(0.5)] });
    expect(counts.task).toBe(2);
  });
});
