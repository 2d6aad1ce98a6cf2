/**
 * Which events are to be run next: those where the surface through the results so far, or the upper edge of its band, reaches highest.
 * The surface only proposes events; no number of a verdict comes from it.
 */
import type { SeedFacts } from "../events/eventKind.ts";
import { missingIn, spaceOf, type WhatIf, whatIfKey } from "../events/registry.ts";
import type { EventRuns } from "../rule/demand.ts";
import { familiesOf } from "../scatter/families.ts";
import { type KnownValue, surfaceThrough } from "../scatter/surface.ts";
import { meanOf, type Quantity } from "./quantities.ts";

/** What chance adds to one run, standard deviation of ln [-]. Assumed. */
const RUN_SCATTER = 0.1;

/** At most `most` events that were not run yet, the ones that reach furthest over what was seen first. */
export function promising(
  runs: readonly EventRuns[],
  quantities: readonly Quantity[],
  facts: SeedFacts,
  most: number,
): readonly WhatIf[] {
  const rooms = familiesOf(runs, ({ event }) => event).map((rows) => {
    const known = new Set(rows.map(({ one }) => whatIfKey(one.event)));
    const others = spaceOf(rows[0]!.one.event)!.others(facts);
    const open = others.filter((event) => !known.has(whatIfKey(event)) && !missingIn(event, facts.rig));
    return { rows, open: open.map((event) => ({ event, at: spaceOf(event)!.coordinates })) };
  });
  const found = new Map<string, { event: WhatIf; over: number }>();
  for (const quantity of quantities) {
    let best = Number.NEGATIVE_INFINITY;
    let first: { event: WhatIf; reach: number } | undefined;
    for (const { rows, open } of rooms) {
      const known = rows.flatMap(({ one, at }): KnownValue[] => {
        const mean = meanOf(one, quantity);
        return mean === undefined ? [] : [{ at, value: mean.value, noise: RUN_SCATTER ** 2 / mean.runs }];
      });
      if (known.length === 0) continue;
      const surface = surfaceThrough(known);
      for (const { at } of known) best = Math.max(best, surface(at).middle);
      for (const { event, at } of open) {
        const here = surface(at);
        if (first && here.middle + Math.sqrt(here.height) <= first.reach) continue;
        const reach = here.middle + Math.sqrt(here.variance);
        if (!first || reach > first.reach) first = { event, reach };
      }
    }
    if (!first || first.reach <= best || Math.max(best, first.reach) < quantity.mattersFrom) continue;
    const key = whatIfKey(first.event);
    const over = first.reach - best;
    if ((found.get(key)?.over ?? 0) < over) found.set(key, { event: first.event, over });
  }
  const chosen = [...found.values()].sort((a, b) => b.over - a.over).slice(0, most);
  return chosen.map(({ event }) => event);
}
