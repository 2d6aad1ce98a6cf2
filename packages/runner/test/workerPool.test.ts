import type { RunOrder } from "@secondline/scenarios";
import { afterAll, beforeAll, expect, it } from "vitest";
import { nodeWorkers } from "../src/node.ts";
import { WorkerPool } from "../src/pool/workerPool.ts";
import { counted } from "./support/countedWorkers.ts";
import { bundleWorker } from "./support/nodeWorker.ts";
import { assessed } from "./support/rig.ts";

let pool: WorkerPool;
let counts: ReturnType<typeof counted>["counts"];
beforeAll(async () => {
  const workers = counted(nodeWorkers(await bundleWorker("poolWorker")));
  counts = workers.counts;
  pool = new WorkerPool({ spawn: workers.spawn, jobs: 2 });
});
afterAll(() => pool.dispose());

it("keeps nothing of some hundred tasks that it has done, and needs no more workers for them", async () => {
  const call = { rank: "study", ticket: { cancelled: false, paused: false } } as const;
  // The rig has two legs: a run that is answered at once.
  const event = { kind: "legFails", at: 0.5, anchor: "A", leg: 8, walker: "hanging" } as const;
  const order: RunOrder = { event, draw: { mass: 1, place: 0, moment: 0 }, accuracy: "quick" };
  const answers = await Promise.all(
    Array.from({ length: 400 }, () => pool.work<"order">(assessed, { kind: "order", order }, call)),
  );
  expect(answers).toHaveLength(400);
  for (const answer of answers) expect(answer).toMatchObject({ value: { ok: false, trouble: { reason: "missing" } } });
  expect(counts).toMatchObject({ spawned: 2, assessed: 2, task: 400 });
  expect(pool.state).toEqual({ workers: 2, busy: 0, open: 0 });
});

it("sends a rig again to a worker that has seen several others since", async () => {
  const ticket = { cancelled: false, paused: false };
  const event = { kind: "legFails", at: 0.5, anchor: "A", leg: 8, walker: "hanging" } as const;
  const order: RunOrder = { event, draw: { mass: 1, place: 0, moment: 0 }, accuracy: "quick" };
  const one = new WorkerPool({ spawn: (listener) => counting.spawn(listener), jobs: 1 });
  const counting = counted(nodeWorkers(await bundleWorker("poolWorker")));
  for (const hash of ["a", "b", "a", "c", "d", "e", "a"]) {
    const answer = await one.work<"order">({ ...assessed, hash }, { kind: "order", order }, { rank: "study", ticket });
    expect(answer.ok).toBe(true);
  }
  one.dispose();
  expect(counting.counts).toMatchObject({ spawned: 1, assessed: 6, task: 7 });
});

it("tells one worker of a rig that is expected, and does not tell it again with the first task", async () => {
  const ticket = { cancelled: false, paused: false };
  const event = { kind: "legFails", at: 0.5, anchor: "A", leg: 8, walker: "hanging" } as const;
  const order: RunOrder = { event, draw: { mass: 1, place: 0, moment: 0 }, accuracy: "quick" };
  const counting = counted(nodeWorkers(await bundleWorker("poolWorker")));
  const one = new WorkerPool({ spawn: (listener) => counting.spawn(listener), jobs: 1 });
  one.expect(assessed);
  expect(counting.counts).toMatchObject({ spawned: 1, assessed: 1, task: 0 });
  await one.work<"order">(assessed, { kind: "order", order }, { rank: "study", ticket });
  one.expect(assessed);
  one.dispose();
  expect(counting.counts).toMatchObject({ spawned: 1, assessed: 1, task: 1 });
});

it("is not waited for after a rig was expected of which nothing is asked: all was kept", async () => {
  const waitedFor = () => process.getActiveResourcesInfo().filter((kind) => kind === "MessagePort").length;
  const spawn = nodeWorkers(await bundleWorker("poolWorker"));
  const one = new WorkerPool({ spawn, jobs: 1 });
  const before = waitedFor();
  one.expect(assessed);
  expect(waitedFor()).toBe(before);
  const event = { kind: "legFails", at: 0.5, anchor: "A", leg: 8, walker: "hanging" } as const;
  const order: RunOrder = { event, draw: { mass: 1, place: 0, moment: 0 }, accuracy: "quick" };
  const ticket = { cancelled: false, paused: false };
  const answer = one.work<"order">(assessed, { kind: "order", order }, { rank: "study", ticket });
  expect(waitedFor()).toBe(before + 1);
  await answer;
  expect(waitedFor()).toBe(before);
  one.dispose();
});
