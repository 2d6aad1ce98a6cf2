/** A value of every layout's state, in the order of the layouts. */
import type { SandboxState } from "../inHand/state.ts";
import type { Layout } from "./layouts.ts";

export interface EachLayout<T> {
  readonly subscribe: (listener: () => void) => () => void;
  /** The same array as long as none of its values changes. `select`: the value of one layout. */
  readonly get: (select: (state: SandboxState, layout: Layout) => T) => readonly T[];
}

export function eachLayout<T>(list: readonly Layout[]): EachLayout<T> {
  let last: readonly T[] = [];
  return {
    subscribe(listener) {
      const ends = list.map(({ sandbox }) => sandbox.store.subscribe(listener));
      return () => {
        for (const end of ends) end();
      };
    },
    get(select) {
      const next = list.map((layout) => select(layout.sandbox.store.getState(), layout));
      if (next.length !== last.length || next.some((value, i) => !Object.is(value, last[i]))) last = next;
      return last;
    },
  };
}
