/** Runs of events outside of a search: each after the one that comes before it, under the same draw. */
import type { PoolRunner } from "@secondline/runner";
import {
  type Assessed,
  eventBefore,
  type GoodRun,
  type RunOrder,
  type RunResult,
  type Sampler,
  type WhatIf,
} from "@secondline/scenarios";

export interface EventDraw {
  readonly event: WhatIf;
  readonly draw: RunOrder["draw"];
}

/** The first draw of each event, or `from` to `to` of it. */
export function drawsOf(sampler: Sampler, events: readonly WhatIf[], from: number, to: number): readonly EventDraw[] {
  return events.flatMap((event) => sampler.draws(event, from, to).map(({ draw }) => ({ event, draw })));
}

/** Results in the order of the draws; undefined of a run that gave no numbers. */
export async function runAll(
  runner: PoolRunner,
  assessed: Assessed,
  draws: readonly EventDraw[],
): Promise<readonly (GoodRun | undefined)[]> {
  const first = draws.flatMap(({ event, draw }) => {
    const before = eventBefore(event);
    return before ? [{ event: before, draw }] : [];
  });
  const before = first.length > 0 ? [...(await runAll(runner, assessed, first))] : [];
  const orders = draws.map(({ event, draw }): RunOrder | undefined => {
    if (!eventBefore(event)) return { event, draw, accuracy: "standard" };
    const known = before.shift();
    return known && { event, draw, accuracy: "standard", before: known };
  });
  const made = orders.flatMap((order) => (order ? [{ assessed, order }] : []));
  const answer = await runner.orders({ id: "brute force", orders: made });
  if (!answer.ok) throw new Error(answer.message);
  const results: RunResult[] = [...answer.value];
  return orders.map((order) => {
    const result = order && results.shift();
    return result?.ok ? result : undefined;
  });
}
