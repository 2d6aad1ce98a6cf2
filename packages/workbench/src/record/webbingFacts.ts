/** One webbing of the record beside the open rig: what it is made of, holds along its length, and must hold. */
import { GENERIC_STOCKS, type LineStock, type Rig } from "@secondline/rig";
import type { Outcome } from "@secondline/scenarios";
import {
  type BreakTest,
  factorsFromLog,
  type StrengthZone,
  strengthAlong,
  type WearRecord,
  type WebbingState,
} from "@secondline/strength";
import { isNamed } from "../wear/rigNamed.ts";

/** What the webbing must hold by the current verdict, where most is asked of it: E times the factor that is required. */
export interface Needed {
  /** E [N]. */
  readonly demand: number;
  readonly required: number;
  /** [N] */
  readonly needed: number;
}

export interface WebbingFacts {
  readonly state: WebbingState;
  /** Undefined: nobody said what it is made of. */
  readonly stock: LineStock | undefined;
  /** The stock comes from the open rig. */
  readonly fromRig: boolean;
  readonly zones: readonly StrengthZone[];
  readonly needed: Needed | undefined;
}

/** Facts of a webbing in that state: its stock, from the open rig or as chosen, and its strength along its length. */
export function webbingFacts(
  state: WebbingState,
  given: {
    readonly rig: Rig;
    readonly record: WearRecord;
    /** Ids of generic stocks by webbing, as chosen. */
    readonly stocks: Readonly<Record<string, string>>;
    /** Tests that count in the verdict. */
    readonly tests: readonly BreakTest[];
    readonly needed: Needed | undefined;
  },
): WebbingFacts {
  const { rig, record, stocks, tests, needed } = given;
  const own = stockInRig(rig, state.id, record);
  const stock = own ?? GENERIC_STOCKS.get(stocks[state.id] ?? "");
  const zones = stock ? strengthAlong(state, stock, tests.length > 0 ? factorsFromLog(tests) : undefined) : [];
  return { state, stock, fromRig: own !== undefined, zones, needed };
}

/** What a webbing is made of, if it hangs in the open rig, did or will. */
function stockInRig(rig: Rig, id: string, record: WearRecord): LineStock | undefined {
  const entries = record.webbings.find((webbing) => webbing.id === id)?.entries ?? [];
  for (const entry of entries.toReversed()) {
    if ((entry.event !== "rigged" && entry.event !== "moved") || !isNamed(rig, entry.placement.rig)) continue;
    const section = rig[entry.placement.line]?.sections[entry.placement.section];
    if (section) return section.stock;
  }
  return undefined;
}

/** Undefined where it does not hang in the open rig, or no event loads it. */
export function neededBy(
  placement: WebbingState["placement"],
  outcome: Outcome | undefined,
  rig: Rig,
): Needed | undefined {
  if (!placement || !outcome || !isNamed(rig, placement.rig)) return undefined;
  const part = outcome.parts.find(({ id }) => id === placement.line);
  return Object.values(part?.byClass ?? {}).reduce<Needed | undefined>((most, { demand, required }) => {
    const needed = demand * required;
    return most && most.needed >= needed ? most : { demand, required, needed };
  }, undefined);
}
