/** The chances of the current state: what can be asked, and what is known. */
import {
  type Assessed,
  type Chances,
  type NoChances,
  noChances,
  type Outcome,
  type WhatIf,
} from "@secondline/scenarios";
import { chanceChoices } from "./chanceChoices.ts";
import type { ChancesState } from "./chancesDesk.ts";
import { readSpreads } from "./spreads.ts";

export interface ChancesInHand {
  /** What-ifs to choose from. */
  readonly open: readonly { readonly key: string; readonly whatIf: WhatIf }[];
  /** Key of the chosen one. */
  readonly chosen: string;
  readonly whatIf: WhatIf;
  /** Why nothing can be worked out of any what-if. */
  readonly nothing: NoChances | undefined;
  /** A spread cannot be read. */
  readonly faulty: boolean;
  /** The chances, with the state that they belong to. */
  readonly found: { readonly chances: Chances; readonly assessed: Assessed } | undefined;
  /** State or spreads are others by now. */
  readonly stale: boolean;
}

/** `key`: of the current state. */
export function chancesInHand(
  { spreads, whatIf: asked, found: kept }: ChancesState,
  { assessed, key }: { readonly assessed: Assessed; readonly key: string },
  outcome: Outcome,
): ChancesInHand {
  const { open, chosen } = chanceChoices(assessed, outcome, asked);
  // Chances of another rig say nothing about this one, not even about how it was before.
  const found = kept?.chances.rigName === assessed.rig.name ? kept : undefined;
  return {
    open,
    chosen: chosen.key,
    whatIf: chosen.whatIf,
    nothing: open.length === 0 ? noChances(assessed, chosen.whatIf) : undefined,
    faulty: !readSpreads(spreads).ok,
    found,
    stale: found !== undefined && (found.key !== key || found.spreads !== spreads),
  };
}
