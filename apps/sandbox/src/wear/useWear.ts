import { GENERIC_STOCKS, type LineStock, type Rig } from "@secondline/rig";
import {
  factorsFromLog,
  type StrengthZone,
  strengthAlong,
  type WearState,
  type WebbingState,
  wearState,
} from "@secondline/strength";
import { createContext, useContext, useMemo } from "react";
import { useStore } from "zustand";
import { useSandbox } from "../state/useSandbox.ts";
import type { WearActions, WearStateSlice, WearStore } from "./wearStore.ts";

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

/** What the webbing must hold: its line's largest load in the last study of the rig in hand, times the factor. */
export interface Needed {
  readonly load: number;
  readonly factor: number;
  readonly needed: number;
  /** The rig has been changed since. */
  readonly old: boolean;
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
  const stocks = useWear((state) => state.history.present.stocks);
  const tests = useWear((state) => (state.history.present.useTests ? state.history.present.log.tests : undefined));
  const rig = useSandbox((state) => state.document.rig);
  const needed = useNeeded(owner.list === "webbings" ? webbings[owner.index] : undefined);
  const state = owner.list === "webbings" ? webbings[owner.index] : undefined;
  return useMemo(() => {
    if (!state) return undefined;
    const own = stockInRig(rig, state.id, record);
    const stock = own ?? GENERIC_STOCKS.get(stocks[state.id] ?? "");
    const zones = stock ? strengthAlong(state, stock, tests && factorsFromLog(tests)) : [];
    return { state, stock, fromRig: own !== undefined, zones, needed };
  }, [state, rig, record, stocks, tests, needed]);
}

/** What a webbing is made of, if it hangs in the rig in hand, did or will. */
function stockInRig(rig: Rig, id: string, record: WearStateSlice["good"]["record"]): LineStock | undefined {
  const entries = record.webbings.find((webbing) => webbing.id === id)?.entries ?? [];
  for (const entry of entries.toReversed()) {
    if ((entry.event !== "rigged" && entry.event !== "moved") || entry.placement.rig !== rig.name) continue;
    const section = rig[entry.placement.line]?.sections[entry.placement.section];
    if (section) return section.stock;
  }
  return undefined;
}

function useNeeded(state: WebbingState | undefined): Needed | undefined {
  const verdict = useSandbox((sandbox) => sandbox.run.verdict);
  const version = useSandbox((sandbox) => sandbox.document.rigVersion);
  const placement = state?.placement;
  return useMemo(() => {
    if (!placement || !verdict || verdict.rig.name !== placement.rig) return undefined;
    const part = verdict.outcome.parts.find(({ id }) => id === placement.line);
    if (!part) return undefined;
    const factor = verdict.outcome.requiredFactor;
    // As the verdict does: a load known to within ± counts at its upper end.
    const load = part.load + (part.loadUncertainty ?? 0);
    return { load, factor, needed: load * factor, old: verdict.rigVersion !== version };
  }, [placement, verdict, version]);
}

/** The rig in hand appears in the record on the day that is shown. */
export function useFits(): boolean {
  const { webbings, parts } = useWearState();
  const name = useSandbox((state) => state.document.rig.name);
  return webbings.some((w) => w.placement?.rig === name) || parts.some((part) => part.rig === name);
}
