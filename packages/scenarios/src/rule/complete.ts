/** A search that has looked at everything: the only thing that a verdict of "holds" can be made of. */
import type { Accuracy } from "@secondline/engine";

declare const complete: unique symbol;

export interface CompleteSearch {
  readonly [complete]: true;
  readonly events: number;
  readonly runs: number;
}

/** Why a search is not complete. Partial knowledge finds faults; it never says that there are none. */
export type SearchGap =
  /** Not every event of the set was run. */
  | { readonly kind: "events"; readonly run: number; readonly of: number }
  /** Runs on the coarse mesh are a first look. */
  | { readonly kind: "coarse" }
  /** The worst events were not drawn. */
  | { readonly kind: "draws" }
  /** Runs of these events gave no numbers that can be trusted. */
  | { readonly kind: "failed"; readonly events: readonly number[] };

export interface SearchState {
  /** How many events the set has, and how many of these were run. */
  readonly of: number;
  readonly run: number;
  readonly runs: number;
  readonly accuracy: Accuracy;
  readonly repeated: boolean;
  readonly failed: readonly number[];
}

export function gapsOf({ of, run, accuracy, repeated, failed }: SearchState): readonly SearchGap[] {
  return [
    ...(run < of ? [{ kind: "events", run, of } as const] : []),
    ...(accuracy === "quick" ? [{ kind: "coarse" } as const] : []),
    ...(repeated ? [] : [{ kind: "draws" } as const]),
    ...(failed.length > 0 ? [{ kind: "failed", events: failed } as const] : []),
  ];
}

/** Undefined while anything is left to look at. */
export function completed(state: SearchState): CompleteSearch | undefined {
  if (gapsOf(state).length > 0) return undefined;
  return { events: state.run, runs: state.runs } as CompleteSearch;
}
