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

/** `key`: by which its result is kept. A run that kills its threads is one run without numbers, not the end of everything. */
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
