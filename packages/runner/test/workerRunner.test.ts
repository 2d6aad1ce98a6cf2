import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { createWorkerRunner, type Progress, type RunRequest, type WorkerRunner } from "../src/index.ts";
import { bundleWorker, NodeWorker } from "./support/nodeWorker.ts";

let path = "";
let workers: NodeWorker[] = [];
let runner: WorkerRunner;

beforeAll(async () => {
  path = await bundleWorker("fakeWorker");
}, 60_000);
beforeEach(() => {
  workers = [];
  runner = createWorkerRunner(() => {
    const worker = new NodeWorker(path);
    workers.push(worker);
    return worker;
  });
});
afterEach(() => runner.dispose());
afterAll(() => runner.dispose());

const request = (name: string, id = name) => ({ id, assessed: { rig: { name } } }) as unknown as RunRequest;
const started = (name: string, id = name) => {
  let answer: ReturnType<WorkerRunner["run"]>;
  const running = new Promise<void>((resolve) => {
    answer = runner.run(request(name, id), () => resolve());
  });
  return { running, answer: answer! };
};

describe("a runner in a worker", () => {
  it("answers with the computed result, its arrays whole", async () => {
    const progress: Progress[] = [];
    const answer = await runner.run(request("plain"), (one) => progress.push(one));
    // The worker of these tests answers with a name and an array alone.
    const value = (answer as unknown as { value: { outcome: { title: string }; recording: { frames: Float32Array } } })
      .value;
    expect(value.outcome.title).toBe("plain");
    const { frames } = value.recording;
    expect(frames).toHaveLength(1000);
    expect(frames[999]).toBe(3);
    expect(progress).toEqual([{ done: 0.5, step: "half" }]);
  });

  it("carries a study of chances across, with its progress", async () => {
    const progress: Progress[] = [];
    const answer = await runner.chances(request("odds on") as never, (one) => progress.push(one));
    expect(answer).toEqual({ ok: true, value: { title: "odds on" } });
    expect(progress).toEqual([{ done: 0.25, step: "a quarter" }]);
  });

  it("makes its worker only when there is work, and keeps it", async () => {
    expect(workers).toHaveLength(0);
    await runner.run(request("one"));
    await runner.run(request("two"));
    expect(workers).toHaveLength(1);
  });

  it("answers a cancelled run at once, and drops the late answer and its progress", async () => {
    let heard = 0;
    const first = new Promise<void>((resolve) => {
      void runner
        .run(request("endless"), () => {
          heard++;
          resolve();
        })
        .then((answer) => answers.push(answer));
    });
    const answers: unknown[] = [];
    await first;
    await runner.cancel("endless");
    const afterCancel = heard;
    expect(answers).toEqual([{ ok: false, reason: "cancelled", code: "cancelled", message: "Cancelled." }]);
    await runner.run(request("plain"));
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(answers).toHaveLength(1);
    expect(heard).toBe(afterCancel);
  });

  it("lets a new request under the same id take the place of the old one", async () => {
    const old = started("endless", "same");
    await old.running;
    const fresh = await runner.run(request("fresh", "same"));
    expect(await old.answer).toMatchObject({ ok: false, reason: "cancelled" });
    expect(fresh).toMatchObject({ ok: true });
  });

  it("carries faults across as data", async () => {
    expect(await runner.run(request("throw"))).toEqual({
      ok: false,
      reason: "failed",
      code: "failed",
      message: "a fault in the program",
    });
    expect(await runner.study(request("x") as never)).toEqual({
      ok: false,
      reason: "failed",
      code: "failed",
      message: "no study here",
    });
  });

  it("answers everything that was pending when the worker dies, and makes a new worker for the next request", async () => {
    const waiting = started("endless");
    await waiting.running;
    const crashed = runner.run(request("crash"));
    expect(await crashed).toMatchObject({ ok: false, reason: "failed" });
    expect(((await crashed) as { message: string }).message).toContain("out of memory, say");
    expect(await waiting.answer).toMatchObject({ ok: false, reason: "failed" });
    expect(await runner.run(request("after"))).toMatchObject({ ok: true });
    expect(workers).toHaveLength(2);
    expect(workers[0]!.terminated).toBe(true);
  });

  it("replaces a worker that does not even hear a cancel", async () => {
    const stuck = runner.run(request("stuck"));
    await new Promise((resolve) => setTimeout(resolve, 100));
    const other = runner.run(request("plain"));
    await runner.cancel("stuck");
    expect(await stuck).toMatchObject({ reason: "cancelled" });
    expect(await other).toMatchObject({ ok: false, reason: "failed" });
    expect(await runner.run(request("again"))).toMatchObject({ ok: true });
  }, 20_000);

  it("answers pending requests when it is disposed of", async () => {
    const waiting = started("endless");
    await waiting.running;
    runner.dispose();
    expect(await waiting.answer).toMatchObject({ ok: false, reason: "cancelled" });
    expect(workers[0]!.terminated).toBe(true);
  });

  it("says so when no worker can be made", async () => {
    const without = createWorkerRunner(() => {
      throw new Error("workers are not allowed here");
    });
    expect(await without.run(request("any"))).toEqual({
      ok: false,
      reason: "failed",
      code: "noWorker",
      message: "workers are not allowed here",
    });
  });
});
