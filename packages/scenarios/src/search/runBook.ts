/** The runs that a search has so far, by event and draw, and what it must still order. */
import type { Accuracy } from "@secondline/engine";
import { eventBefore, type WhatIf, whatIfKey } from "../events/registry.ts";
import type { GoodRun, RunResult, Trouble } from "../facts/runFacts.ts";
import type { Trace } from "../facts/trace.ts";
import type { EventRuns } from "../rule/demand.ts";
import type { RunOrder } from "../run/runOrder.ts";
import { CENTRE, type DrawSample } from "../scatter/sampler.ts";

/** One event, under one of the draws, on one mesh. */
export interface Wanted {
  readonly event: WhatIf;
  readonly sample: DrawSample;
  readonly accuracy: Accuracy;
  /** Keep the trace of this draw too, if traces are kept. */
  readonly trace?: boolean;
}

interface Entry {
  readonly result: RunResult;
  readonly deviates: readonly number[];
}

export class RunBook {
  readonly #traces: boolean;
  /** Results by event, then by mesh and draw. */
  readonly #events = new Map<string, Map<string, Entry>>();
  readonly #keys = new WeakMap<WhatIf, string>();
  #good = 0;

  constructor(traces: boolean) {
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

  /** How many of the runs wanted are not made yet; those that must come before them are not counted. */
  missing(wanted: readonly Wanted[]): number {
    return wanted.filter((one) => !this.#known(one)).length;
  }

  put(wanted: Wanted, result: RunResult): void {
    const key = this.#key(wanted.event);
    const slots = this.#events.get(key) ?? new Map<string, Entry>();
    this.#events.set(key, slots);
    if (result.ok && !slots.has(this.#slot(wanted))) this.#good++;
    slots.set(this.#slot(wanted), { result, deviates: wanted.sample.deviates });
  }

  result(event: WhatIf, sample: DrawSample, accuracy: Accuracy): RunResult | undefined {
    return this.#known({ event, sample, accuracy });
  }

  /** All good runs of an event. */
  good(event: WhatIf): readonly GoodRun[] {
    return this.#all(event).flatMap(({ result }) => (result.ok ? [result] : []));
  }

  /** Traces of an event's draws. */
  drawnTraces(event: WhatIf): readonly Trace[] {
    return this.#all(event).flatMap(({ result, deviates }) =>
      result.ok && result.trace && deviates.length > 0 ? [result.trace] : [],
    );
  }

  /** Whether the event, or any of its draws, gave no numbers: a draw that fails may be the hardest of all. */
  failed(event: WhatIf): boolean {
    return this.#all(event).some(({ result }) => !result.ok);
  }

  eventRuns(events: readonly WhatIf[], counts: (index: number) => boolean): readonly EventRuns[] {
    return events.flatMap((event, index): EventRuns[] => {
      if (!counts(index)) return [];
      const good = this.#all(event).flatMap(({ result, deviates }) => (result.ok ? [{ result, deviates }] : []));
      if (good.length === 0) return [];
      const [runs, deviates] = [good.map(({ result }) => result), good.map((one) => one.deviates)];
      return [{ index, event, runs, deviates }];
    });
  }

  #all(event: WhatIf): readonly Entry[] {
    return [...(this.#events.get(this.#key(event))?.values() ?? [])];
  }

  #known(wanted: Wanted): RunResult | undefined {
    return this.#events.get(this.#key(wanted.event))?.get(this.#slot(wanted))?.result;
  }

  #key(event: WhatIf): string {
    const known = this.#keys.get(event) ?? whatIfKey(event);
    this.#keys.set(event, known);
    return known;
  }

  #slot({ sample, accuracy }: Wanted): string {
    return `${accuracy} ${sample.id}`;
  }

  /** Under the same draw: what comes before is part of the same fall. */
  #before({ event, sample, accuracy }: Wanted): Wanted | undefined {
    const before = eventBefore(event);
    return before && { event: before, sample, accuracy };
  }

  #order({ event, sample, accuracy, trace = false }: Wanted, before: GoodRun | undefined): RunOrder {
    return {
      event,
      draw: sample.draw,
      accuracy,
      ...(before ? { before } : {}),
      ...(this.#traces && (trace || sample === CENTRE) ? { trace: true } : {}),
    };
  }
}

const afterOf = (trouble: Trouble): Trouble => ({
  reason: "before",
  ...(trouble.detail === undefined ? {} : { detail: trouble.detail }),
});
