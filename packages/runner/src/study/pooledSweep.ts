/**
 * A sweep whose runs are made by a pool. Kept results are taken first, so another look at the same range makes few new runs.
 */
import { NothingSwept, sweep, sweepPoint } from "@secondline/scenarios";
import type { ServiceAnswer, SweepAnswer, SweepRequest } from "../service.ts";
import { nextTask } from "../tasks/nextTask.ts";
import { type PooledOrders, pooledOrders } from "./pooledOrders.ts";

export interface PooledSweep extends Omit<PooledOrders, "orders">, Omit<SweepRequest, "id"> {}

/** Least number of rigs for a curve [-]. */
const LEAST_POINTS = 2;

export async function pooledSweep({
  rigs,
  bad,
  knobs,
  options,
  ...work
}: PooledSweep): Promise<ServiceAnswer<SweepAnswer>> {
  if (rigs.length < LEAST_POINTS) return { ok: true, value: { kind: "fewPoints", points: rigs.length, bad } };
  const points = [];
  for (const rig of rigs) {
    await nextTask();
    points.push(sweepPoint(rig));
  }
  const rounds = sweep({ points, bad }, knobs, options);
  try {
    let step = rounds.next();
    while (!step.done) {
      const { orders, made, expected } = step.value;
      const answer = await pooledOrders({
        ...work,
        orders,
        onProgress({ made: now = 0, doing }) {
          const all = made + now;
          work.onProgress({ done: Math.min(1, all / expected), made: all, expected, ...(doing ? { doing } : {}) });
        },
      });
      if (!answer.ok) return answer;
      step = rounds.next(answer.value);
    }
    return { ok: true, value: { kind: "swept", swept: step.value } };
  } catch (error) {
    if (error instanceof NothingSwept) return { ok: true, value: { kind: "nothing" } };
    throw error;
  }
}
