/**
 * Chances whose draws are run by a pool. Kept results are taken first: a verdict has made many of these runs already. The
 * chances are worked out here, in slices. Neither the number of workers nor the order of finishing changes an answer.
 */
import type { Assessed, Chances, ChancesOptions, RunResult } from "@secondline/scenarios";
import { chancesFrom, ordersOf, planChances, RUNS_SHARE } from "@secondline/scenarios/chances";
import type { ServiceAnswer } from "../service.ts";
import { inSlices } from "../tasks/inSlices.ts";
import { nextTask } from "../tasks/nextTask.ts";
import { type PooledOrders, pooledOrders } from "./pooledOrders.ts";

export interface PooledChances extends Omit<PooledOrders, "orders"> {
  readonly assessed: Assessed;
  readonly options: ChancesOptions;
}

export async function pooledChances({ assessed, options, ...work }: PooledChances): Promise<ServiceAnswer<Chances>> {
  const { ticket, onProgress } = work;
  await nextTask();
  const plan = planChances(assessed, options);
  const share = RUNS_SHARE / plan.events.length;
  let results: readonly RunResult[] = [];
  for (const number of plan.events.keys()) {
    const ordered = ordersOf(plan, number, results);
    const orders = ordered.flatMap((order) => (order ? [{ assessed, order }] : []));
    const answer = await pooledOrders({
      ...work,
      orders,
      onProgress: ({ done, doing }) => onProgress({ done: share * (number + done), ...(doing ? { doing } : {}) }),
    });
    if (!answer.ok) return answer;
    const made = answer.value.values();
    results = ordered.map((order, i) => (order ? made.next().value! : results[i]!));
  }
  const signal = {
    get aborted() {
      return ticket.cancelled;
    },
  };
  return inSlices(async () => chancesFrom(assessed, plan, results), { signal, onProgress });
}
