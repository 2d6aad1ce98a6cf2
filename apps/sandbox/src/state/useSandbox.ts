import type { Actions, Sandbox, SandboxState } from "@secondline/workbench";
import { createContext, useContext } from "react";
import { useStore } from "zustand";

export const SandboxContext = createContext<Sandbox | undefined>(undefined);

export function useContextOrThrow(): Sandbox {
  const sandbox = useContext(SandboxContext);
  if (!sandbox) throw new Error("There is no SandboxContext around this component");
  return sandbox;
}

export function useSandbox<T>(selector: (state: SandboxState) => T): T {
  return useStore(useContextOrThrow().store, selector);
}

export function useActions(): Actions {
  return useContextOrThrow().actions;
}

/** Recordings of the run in sight and the one before; renders again when either changes. */
export function useRecordings() {
  const { recordings, store } = useContextOrThrow();
  useStore(store, (state) => state.run.recordingVersion);
  return { current: recordings.current, previous: recordings.previous };
}
