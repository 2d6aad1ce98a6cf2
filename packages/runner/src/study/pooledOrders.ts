/** Runs of any rigs, made by a pool: each is asked of what is kept first, and handed back in the order of the orders. */
import type { Assessed, RunOrder, RunResult } from "@secondline/scenarios";
import { CANCELLED, type Failed } from "../failure.ts";
import type { Rank, Ticket, WorkerPool } from "../pool/workerPool.ts";
import { runKey, worthKeeping } from "../results/resultKey.ts";
import type { RunResults } from "../results/runResults.ts";
import type { Answer, Progress } from "../service.ts";
import { nextTask } from "../tasks/nextTask.ts";

export interface OrderOf {
  readonly assessed: Assessed;
  readonly order: RunOrder;
}

export interface PooledOrders {
  readonly orders: readonly OrderOf[];
  readonly pool: WorkerPool;
  readonly results: RunResults;
  readonly rank: Rank;
  readonly ticket: Ticket;
  readonly onProgress: (progress: Progress) => void;
}

export async function pooledOrders(work: PooledOrders): Promise<Answer<readonly RunResult[]>> {
  const { orders, results, ticket, pool, rank, onProgress } = work;
  await nextTask();
  const keys = orders.map(({ assessed, order }) => runKey(assessed, order));
  const found = [...(await results.get(keys))];
  if (ticket.cancelled) return CANCELLED;
  let done = found.filter(Boolean).length;
  let failure: Failed | undefined;
  const tell = ({ order }: OrderOf) => onProgress({ done: done / orders.length, doing: order.event, made: done });
  await Promise.all(
    orders.map(async (one, i) => {
      if (found[i]) return;
      const { assessed, order } = one;
      const call = { rank, ticket, onProgress: () => tell(one) };
      const answer = await pool.work<"order">(assessed, { kind: "order", order }, call);
      if (answer.ok) {
        found[i] = answer.value;
        if (worthKeeping(answer.value)) await results.put(keys[i]!, answer.value);
      } else if (answer.code === "workerLost") {
        // A run that kills its threads is one run without numbers, not the end of all.
        found[i] = { ok: false, trouble: { reason: "cancelled", detail: answer.message } };
      } else failure ??= answer;
      done++;
      tell(one);
    }),
  );
  return failure ?? { ok: true, value: found as RunResult[] };
}
