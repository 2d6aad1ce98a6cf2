import { GENERIC_STOCKS, type LineStock, type Rig } from "@secondline/rig";
import { speaksOf } from "@secondline/scenarios";
import {
  factorsFromLog,
  type StrengthZone,
  strengthAlong,
  type WearState,
  type WebbingState,
  wearState,
} from "@secondline/strength";
import { foundOf, isNamed, type WearActions, type WearStateSlice, type WearStore } from "@secondline/workbench";
import { createContext, useContext, useMemo } from "react";
import { useStore } from "zustand";
import { useSandbox } from "../state/useSandbox.ts";

export const WearContext = createContext<WearStore | undefined>(undefined);

function useWearStore(): WearStore {
  const store = useContext(WearContext);
  if (!store) throw new Error("There is no WearContext around this component");
  return store;
}

export function useWear<T>(selector: (state: WearStateSlice) => T): T {
  return useStore(useWearStore().store, selector);
}

export const useWearActions = (): WearActions => useWearStore().actions;

/** State of everything in the record on the day that is shown. */
export function useWearState(): WearState {
  const record = useWear((state) => state.good.record);
  const on = useWear((state) => state.on);
  return useMemo(() => wearState(record, on), [record, on]);
}

/** What the webbing must hold by the verdict in hand, where most is asked of it: E times the factor that is required. */
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
  /** The stock comes from the rig in hand. */
  readonly fromRig: boolean;
  readonly zones: readonly StrengthZone[];
  readonly needed: Needed | undefined;
}

/** The webbing that is looked at; undefined when a part is, or none. */
export function useWebbingFacts(): WebbingFacts | undefined {
  const { webbings } = useWearState();
  const owner = useWear((state) => state.owner);
  const record = useWear((state) => state.good.record);
  const stocks = useWear((state) => state.work.stocks);
  // Those that count in the verdict.
  const tests = useSandbox((sandbox) => sandbox.assessment.assessed.tests);
  const rig = useSandbox((state) => state.document.rig);
  const needed = useNeeded(owner.list === "webbings" ? webbings[owner.index] : undefined);
  const state = owner.list === "webbings" ? webbings[owner.index] : undefined;
  return useMemo(() => {
    if (!state) return undefined;
    const own = stockInRig(rig, state.id, record);
    const stock = own ?? GENERIC_STOCKS.get(stocks[state.id] ?? "");
    const zones = stock ? strengthAlong(state, stock, tests.length > 0 ? factorsFromLog(tests) : undefined) : [];
    return { state, stock, fromRig: own !== undefined, zones, needed };
  }, [state, rig, record, stocks, tests, needed]);
}

/** What a webbing is made of, if it hangs in the rig in hand, did or will. */
function stockInRig(rig: Rig, id: string, record: WearStateSlice["good"]["record"]): LineStock | undefined {
  const entries = record.webbings.find((webbing) => webbing.id === id)?.entries ?? [];
  for (const entry of entries.toReversed()) {
    if ((entry.event !== "rigged" && entry.event !== "moved") || !isNamed(rig, entry.placement.rig)) continue;
    const section = rig[entry.placement.line]?.sections[entry.placement.section];
    if (section) return section.stock;
  }
  return undefined;
}

function useNeeded(state: WebbingState | undefined): Needed | undefined {
  const outcome = useSandbox((sandbox) => foundOf(sandbox)?.outcome);
  const rig = useSandbox((sandbox) => sandbox.document.rig);
  const placement = state?.placement;
  return useMemo(() => {
    if (!placement || !outcome || !isNamed(rig, placement.rig)) return undefined;
    const part = outcome.parts.find(({ id }) => id === placement.line);
    return Object.values(part?.byClass ?? {}).reduce<Needed | undefined>((most, { demand, required }) => {
      const needed = demand * required;
      return most && most.needed >= needed ? most : { demand, required, needed };
    }, undefined);
  }, [placement, outcome, rig]);
}

/** The rig in hand appears in the record on the day that is shown. */
export function useFits(): boolean {
  const record = useWear((state) => state.good.record);
  const on = useWear((state) => state.on);
  const rig = useSandbox((state) => state.document.rig);
  return useMemo(() => speaksOf(record, rig, on), [record, rig, on]);
}
