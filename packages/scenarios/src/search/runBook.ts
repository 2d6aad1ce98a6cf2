/** The runs that a search has so far, by event and draw, and what it must still order. */
import type { Accuracy } from "@secondline/engine";
import { eventBefore, type WhatIf, whatIfKey } from "../events/registry.ts";
import type { EventRuns } from "../rule/demand.ts";
import type { Draw, GoodRun, RunOrder, RunResult, Trouble } from "../run/runFacts.ts";

interface Slot {
  readonly result: RunResult;
}

/** One event, under one of the draws, on one mesh. */
export interface Wanted {
  readonly event: WhatIf;
  readonly draw: number;
  readonly accuracy: Accuracy;
}

export class RunBook {
  readonly #draws: readonly Draw[];
  readonly #traces: boolean;
  readonly #slots = new Map<string, Slot>();
  #good = 0;

  constructor(draws: readonly Draw[], traces: boolean) {
    this.#draws = draws;
    this.#traces = traces;
  }

  /** Runs that gave numbers. */
  get runs(): number {
    return this.#good;
  }

  has(wanted: Wanted): boolean {
    return this.#slots.has(this.#key(wanted));
  }

  /** Orders that can be made now, and what must be waited for: an event is run after the one that comes before it. */
  next(wanted: readonly Wanted[]): readonly { readonly wanted: Wanted; readonly order: RunOrder }[] {
    const found = new Map<string, { wanted: Wanted; order: RunOrder }>();
    const visit = (one: Wanted): void => {
      const key = this.#key(one);
      if (this.#slots.has(key) || found.has(key)) return;
      const before = this.#before(one);
      if (!before) {
        found.set(key, { wanted: one, order: this.#order(one, undefined) });
        return;
      }
      const known = this.#slots.get(this.#key(before));
      if (!known) visit(before);
      else if (known.result.ok) found.set(key, { wanted: one, order: this.#order(one, known.result) });
      else this.#slots.set(key, { result: { ok: false, trouble: afterOf(known.result.trouble) } });
    };
    for (const one of wanted) visit(one);
    return [...found.values()];
  }

  put(wanted: Wanted, result: RunResult): void {
    const key = this.#key(wanted);
    if (!this.#slots.has(key) && result.ok) this.#good++;
    this.#slots.set(key, { result });
  }

  result(event: WhatIf, draw: number, accuracy: Accuracy): RunResult | undefined {
    return this.#slots.get(this.#key({ event, draw, accuracy }))?.result;
  }

  /** All good runs of an event. */
  good(event: WhatIf): readonly GoodRun[] {
    const key = whatIfKey(event);
    return [...this.#slots].flatMap(([slot, { result }]) => (slot.endsWith(` ${key}`) && result.ok ? [result] : []));
  }

  /** Runs of an event that were made and failed, under whatever draw. */
  failed(event: WhatIf): boolean {
    const key = whatIfKey(event);
    return [...this.#slots].some(([slot, { result }]) => slot.endsWith(` ${key}`) && !result.ok);
  }

  eventRuns(events: readonly WhatIf[], counts: (index: number) => boolean): readonly EventRuns[] {
    return events.flatMap((event, index): EventRuns[] => {
      if (!counts(index)) return [];
      const runs = this.good(event);
      return runs.length > 0 ? [{ index, event, runs }] : [];
    });
  }

  #key({ event, draw, accuracy }: Wanted): string {
    return `${accuracy} ${draw} ${whatIfKey(event)}`;
  }

  #before({ event, draw, accuracy }: Wanted): Wanted | undefined {
    const before = eventBefore(event);
    return before && { event: before, draw, accuracy };
  }

  #order({ event, draw, accuracy }: Wanted, before: GoodRun | undefined): RunOrder {
    return {
      event,
      draw: this.#draws[draw]!,
      accuracy,
      ...(before ? { before } : {}),
      ...(this.#traces && draw === 0 ? { trace: true } : {}),
    };
  }
}

const afterOf = (trouble: Trouble): Trouble => ({
  reason: "before",
  ...(trouble.detail === undefined ? {} : { detail: trouble.detail }),
});
