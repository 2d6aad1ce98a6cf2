/** One run, made by a pool and kept. */
import type { Assessed, RunOrder, RunResult } from "@secondline/scenarios";
import type { TaskCall, WorkerPool } from "../pool/workerPool.ts";
import { worthStoring } from "../results/resultKey.ts";
import type { RunResults } from "../results/runResults.ts";
import type { ServiceAnswer } from "../service.ts";

export interface OrderOf {
  readonly assessed: Assessed;
  readonly order: RunOrder;
}

/** `key`: the key of its result. A run that kills its threads counts as one run without numbers; the study goes on. */
export async function makeOrder(
  { pool, results }: { readonly pool: WorkerPool; readonly results: RunResults },
  { assessed, order }: OrderOf,
  key: string,
  call: TaskCall,
): Promise<ServiceAnswer<RunResult>> {
  const answer = await pool.work<"order">(assessed, { kind: "order", order }, call);
  if (answer.ok) {
    if (worthStoring(answer.value)) await results.put(key, answer.value);
    return answer;
  }
  if (answer.code !== "workerLost") return answer;
  return { ok: true, value: { ok: false, trouble: { reason: "cancelled", detail: answer.message } } };
}
