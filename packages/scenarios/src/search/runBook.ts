/** The runs that a search has so far, by event and draw, and what it must still order. */
import type { Accuracy } from "@secondline/engine";
import { eventBefore, type WhatIf, whatIfKey } from "../events/registry.ts";
import type { EventRuns } from "../rule/demand.ts";
import type { Draw, GoodRun, RunOrder, RunResult, Trouble } from "../run/runFacts.ts";

/** One event, under one of the draws, on one mesh. */
export interface Wanted {
  readonly event: WhatIf;
  readonly draw: number;
  readonly accuracy: Accuracy;
}

export class RunBook {
  readonly #draws: readonly Draw[];
  readonly #traces: boolean;
  /** By event, then by mesh and draw. */
  readonly #events = new Map<string, Map<string, RunResult>>();
  readonly #keys = new WeakMap<WhatIf, string>();
  #good = 0;

  constructor(draws: readonly Draw[], traces: boolean) {
    this.#draws = draws;
    this.#traces = traces;
  }

  /** Runs that gave numbers. */
  get runs(): number {
    return this.#good;
  }

  /** At most `most` orders that can be made now: an event is run after the one that comes before it. */
  next(wanted: readonly Wanted[], most: number): readonly { readonly wanted: Wanted; readonly order: RunOrder }[] {
    const found = new Map<string, { wanted: Wanted; order: RunOrder }>();
    const visit = (one: Wanted): void => {
      const key = `${this.#slot(one)} ${this.#key(one.event)}`;
      if (this.#known(one) || found.has(key)) return;
      const before = this.#before(one);
      if (!before) {
        found.set(key, { wanted: one, order: this.#order(one, undefined) });
        return;
      }
      const known = this.#known(before);
      if (!known) visit(before);
      else if (known.ok) found.set(key, { wanted: one, order: this.#order(one, known) });
      else this.put(one, { ok: false, trouble: afterOf(known.trouble) });
    };
    for (const one of wanted) {
      if (found.size >= most) break;
      visit(one);
    }
    return [...found.values()];
  }

  put(wanted: Wanted, result: RunResult): void {
    const key = this.#key(wanted.event);
    const slots = this.#events.get(key) ?? new Map<string, RunResult>();
    this.#events.set(key, slots);
    if (result.ok && !slots.has(this.#slot(wanted))) this.#good++;
    slots.set(this.#slot(wanted), result);
  }

  result(event: WhatIf, draw: number, accuracy: Accuracy): RunResult | undefined {
    return this.#known({ event, draw, accuracy });
  }

  /** All good runs of an event. */
  good(event: WhatIf): readonly GoodRun[] {
    return this.#all(event).filter((result) => result.ok);
  }

  /** Whether a run of the event was made and failed, under whatever draw. */
  failed(event: WhatIf): boolean {
    return this.#all(event).some(({ ok }) => !ok);
  }

  eventRuns(events: readonly WhatIf[], counts: (index: number) => boolean): readonly EventRuns[] {
    return events.flatMap((event, index): EventRuns[] => {
      if (!counts(index)) return [];
      const runs = this.good(event);
      return runs.length > 0 ? [{ index, event, runs }] : [];
    });
  }

  #all(event: WhatIf): readonly RunResult[] {
    return [...(this.#events.get(this.#key(event))?.values() ?? [])];
  }

  #known(wanted: Wanted): RunResult | undefined {
    return this.#events.get(this.#key(wanted.event))?.get(this.#slot(wanted));
  }

  #key(event: WhatIf): string {
    const known = this.#keys.get(event) ?? whatIfKey(event);
    this.#keys.set(event, known);
    return known;
  }

  #slot({ draw, accuracy }: Wanted): string {
    return `${accuracy} ${draw}`;
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
