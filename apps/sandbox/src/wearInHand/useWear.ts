import { speaksOf } from "@secondline/scenarios";
import { type WearState, type WebbingState, wearState } from "@secondline/strength";
import { foundOf, type WearActions, type WearStateSlice, type WearStore } from "@secondline/workbench";
import { type Needed, neededBy, type WebbingFacts, webbingFacts } from "@secondline/workbench/record";
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

/** The webbing that is looked at; undefined when a part is, or none. */
export function useWebbingFacts(): WebbingFacts | undefined {
  const { webbings } = useWearState();
  const owner = useWear((state) => state.owner);
  const record = useWear((state) => state.good.record);
  const stocks = useWear((state) => state.work.stocks);
  const tests = useSandbox((sandbox) => sandbox.assessment.assessed.tests);
  const rig = useSandbox((state) => state.document.rig);
  const state = owner.list === "webbings" ? webbings[owner.index] : undefined;
  const needed = useNeeded(state);
  return useMemo(
    () => (state ? webbingFacts(state, { rig, record, stocks, tests, needed }) : undefined),
    [state, rig, record, stocks, tests, needed],
  );
}

function useNeeded(state: WebbingState | undefined): Needed | undefined {
  const outcome = useSandbox((sandbox) => foundOf(sandbox)?.outcome);
  const rig = useSandbox((sandbox) => sandbox.document.rig);
  const placement = state?.placement;
  return useMemo(() => neededBy(placement, outcome, rig), [placement, outcome, rig]);
}

/** The open rig appears in the record on the day that is shown. */
export function useFits(): boolean {
  const record = useWear((state) => state.good.record);
  const on = useWear((state) => state.on);
  const rig = useSandbox((state) => state.document.rig);
  return useMemo(() => speaksOf(record, rig, on), [record, rig, on]);
}
