import {
  eachLayout,
  type Layout,
  type Layouts,
  layoutRunner,
  openLayouts,
  type Sandbox,
  type SandboxState,
} from "@secondline/workbench";
import { useMemo, useSyncExternalStore } from "react";
import { useStore } from "zustand";
import type { Booted } from "../boot.ts";
import { deviceShelf } from "../device/shelf.ts";
import { pageServices } from "../state/pageServices.ts";
import { pageRunner, sideRunner } from "../worker/runner.ts";

const made = new WeakMap<Sandbox, Layouts>();

/** The layouts of a sandbox: made when they are first looked at, the same ever after. */
export function layoutsOf({ sandbox, read, kept }: Booted): Layouts {
  const known = made.get(sandbox);
  if (known) return known;
  const services = pageServices({ runner: layoutRunner(pageRunner(), sideRunner()), read, kept });
  const { layouts, flush } = openLayouts(sandbox, services, deviceShelf());
  addEventListener("pagehide", flush);
  made.set(sandbox, layouts);
  return layouts;
}

/** The layouts themselves; renders again when one comes or goes. */
export function useLayoutList(layouts: Layouts): readonly Layout[] {
  return useStore(layouts.store, (state) => state.layouts);
}

/** A value of every layout's state, in the order of the layouts; renders again when one value changes. */
export function useEach<T>(list: readonly Layout[], select: (state: SandboxState, layout: Layout) => T): readonly T[] {
  const each = useMemo(() => eachLayout<T>(list), [list]);
  return useSyncExternalStore(each.subscribe, () => each.get(select));
}
