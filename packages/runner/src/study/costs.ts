/** Durations of runs by kind. The longest are begun first, so that no worker is left with a long one at the end. */
import type { RunOrder } from "@secondline/scenarios";

/** Weight of the latest run in the mean [-]. */
const LATEST_WEIGHT = 0.3;

export class RunCosts {
  readonly #ms = new Map<string, number>();

  took(order: RunOrder, ms: number): void {
    const kind = kindOf(order);
    const mean = this.#ms.get(kind) ?? ms;
    this.#ms.set(kind, mean + LATEST_WEIGHT * (ms - mean));
  }

  /** Positions of the orders, longest first. Kinds that have not been run yet come before all others, in the order given. */
  longestFirst(orders: readonly RunOrder[]): readonly number[] {
    const cost = orders.map((order) => this.#ms.get(kindOf(order)) ?? Number.MAX_VALUE);
    return orders.map((_, i) => i).sort((a, b) => cost[b]! - cost[a]!);
  }
}

function kindOf({ event, accuracy }: RunOrder): string {
  const pose = "walker" in event ? event.walker : "";
  return `${accuracy} ${event.kind} ${pose}`;
}
