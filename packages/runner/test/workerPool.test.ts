import type { RunOrder } from "@secondline/scenarios";
import { afterAll, beforeAll, expect, it, vi } from "vitest";
import { nodeWorkers } from "../src/node.ts";
import type { SpawnWorker, ToWorker } from "../src/pool/messages.ts";
import { type TaskCall, WorkerPool } from "../src/pool/workerPool.ts";
import { knownOf } from "../src/tasks/known.ts";
import { counted } from "./support/countedWorkers.ts";
import { bundleWorker } from "./support/nodeWorker.ts";
import { assessed } from "./support/rig.ts";

/** The rig has two legs: a run that is answered at once. */
const order: RunOrder = {
  event: { kind: "legFails", at: 0.5, anchor: "A", leg: 8, walker: "hanging" },
  draw: { mass: 1, place: 0, moment: 0 },
  accuracy: "quick",
};
const task = { kind: "order", order } as const;
const call = (): TaskCall => ({ rank: "study", ticket: { cancelled: false, paused: false } });

let real: SpawnWorker;
let pool: WorkerPool;
let counts: ReturnType<typeof counted>["counts"];
beforeAll(async () => {
  real = nodeWorkers(await bundleWorker("poolWorker"));
  const workers = counted(real);
  counts = workers.counts;
  pool = new WorkerPool({ spawn: workers.spawn, jobs: 2 });
});
afterAll(() => pool.dispose());

// First, while no other worker is there.
it("is waited for while it has a task, and neither before nor after", async () => {
  const waitedFor = () => process.getActiveResourcesInfo().filter((kind) => kind === "MessagePort").length;
  // Workers of other files may be ending still.
  await vi.waitFor(() => expect(waitedFor()).toBe(0));
  const before = waitedFor();
  let answered: () => void = () => undefined;
  const answer = new Promise<void>((resolve) => {
    answered = resolve;
  });
  const worker = real({ heard: ({ kind }) => kind === "answer" && answered(), lost: () => undefined });
  worker.post({ kind: "assessed", hash: assessed.hash, known: knownOf(assessed) });
  expect(waitedFor()).toBe(before);
  worker.post({ kind: "task", id: 1, hash: assessed.hash, task });
  expect(waitedFor()).toBe(before + 1);
  await answer;
  expect(waitedFor()).toBe(before);
  worker.terminate();
});

it("keeps nothing of some hundred tasks that it has done, and needs no more workers for them", async () => {
  const answers = await Promise.all(Array.from({ length: 400 }, () => pool.work<"order">(assessed, task, call())));
  expect(answers).toHaveLength(400);
  for (const answer of answers) expect(answer).toMatchObject({ value: { ok: false, trouble: { reason: "missing" } } });
  expect(counts).toMatchObject({ spawned: 2, assessed: 2, task: 400 });
  expect(pool.state).toEqual({ workers: 2, busy: 0, open: 0 });
});

it("sends a rig again to a worker that has seen several others since", async () => {
  const counting = counted(real);
  const one = new WorkerPool({ spawn: counting.spawn, jobs: 1 });
  for (const hash of ["a", "b", "a", "c", "d", "e", "a"]) {
    const answer = await one.work<"order">({ ...assessed, hash }, task, call());
    expect(answer.ok).toBe(true);
  }
  one.dispose();
  expect(counting.counts).toMatchObject({ spawned: 1, assessed: 6, task: 7 });
});

it("sends the strengths and no break tests, of which there may be thousands", async () => {
  const sent: ToWorker[] = [];
  const spawn: SpawnWorker = (listener) => {
    const worker = real(listener);
    const post = (message: ToWorker) => {
      sent.push(message);
      worker.post(message);
    };
    return { ...worker, post };
  };
  const test = { part: "webbing", material: "pes", state: "new", wet: false, outcome: "broke" } as const;
  const result = (i: number) => ({ kind: "exact", value: 25_000 + i }) as const;
  const tests = Array.from({ length: 800 }, (_, i) => ({ ...test, result: result(i) }));
  const one = new WorkerPool({ spawn, jobs: 1 });
  await one.work<"order">({ ...assessed, tests }, task, call());
  one.dispose();
  expect(sent.map(({ kind }) => kind)).toEqual(["assessed", "task"]);
  expect(JSON.stringify(sent).length).toBeLessThan(JSON.stringify(tests).length);
});

it("answers with the reason when strengths cannot be worked out, and works on", async () => {
  const one = new WorkerPool({ spawn: real, jobs: 1 });
  const { leash: _, ...rest } = assessed.rig;
  const unsound = { ...assessed, hash: "unsound", rig: rest as typeof assessed.rig };
  const answers = await Promise.all([unsound, assessed].map((rig) => one.work<"order">(rig, task, call())));
  expect(answers).toMatchObject([{ ok: false, reason: "failed" }, { ok: true }]);
  one.dispose();
});
