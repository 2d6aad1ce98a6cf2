/** Runs of any rigs, made by a pool. Kept results are taken first, and results are handed back in the order of the orders. */
import type { RunResult } from "@secondline/scenarios";
import { CANCELLED, type Failed } from "../failure.ts";
import type { Rank, Ticket, WorkerPool } from "../pool/workerPool.ts";
import { runKey, serves } from "../results/resultKey.ts";
import type { RunResults } from "../results/runResults.ts";
import type { Progress, ServiceAnswer } from "../service.ts";
import { nextTask } from "../tasks/nextTask.ts";
import { makeOrder, type OrderOf } from "./makeOrder.ts";

export interface PooledOrders {
  readonly orders: readonly OrderOf[];
  readonly pool: WorkerPool;
  readonly results: RunResults;
  readonly rank: Rank;
  readonly ticket: Ticket;
  readonly onProgress: (progress: Progress) => void;
}

export async function pooledOrders(work: PooledOrders): Promise<ServiceAnswer<readonly RunResult[]>> {
  const { orders, results, ticket, rank, onProgress } = work;
  await nextTask();
  const keys = orders.map(({ assessed, order }) => runKey(assessed, order));
  const found = (await results.get(keys)).map((kept, i) => (serves(kept, orders[i]!.order) ? kept : undefined));
  if (ticket.cancelled) return CANCELLED;
  let done = found.filter(Boolean).length;
  let failure: Failed | undefined;
  const tell = ({ order }: OrderOf) => onProgress({ done: done / orders.length, doing: order.event, made: done });
  await Promise.all(
    orders.map(async (one, i) => {
      if (found[i]) return;
      const answer = await makeOrder(work, one, keys[i]!, { rank, ticket, onProgress: () => tell(one) });
      if (answer.ok) found[i] = answer.value;
      else failure ??= answer;
      done++;
      tell(one);
    }),
  );
  return failure ?? { ok: true, value: found as RunResult[] };
}
