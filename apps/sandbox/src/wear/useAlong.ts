/** The stretch of the webbing in sight: one for the ribbon, its lanes, the strength below, and what the calendar dims. */

import { fitRange, isFit, panned, type TimeRange, zoomed } from "@secondline/figures/time";
import type { Stretch } from "@secondline/workbench";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";

/** No one measures along a webbing finer than in centimetres: less than this is not drawn over the whole width [m]. */
const LEAST_VISIBLE_LENGTH = 0.5;

/** `sight`, but not shorter than anybody needs. */
export function notTooShort(sight: TimeRange, length: number): TimeRange {
  const span = sight.to - sight.from;
  return span >= LEAST_VISIBLE_LENGTH
    ? sight
    : zoomed(sight, span / LEAST_VISIBLE_LENGTH, (sight.from + sight.to) / 2, length);
}

/** A place with as much webbing on either side as lets one see where it lies. */
export function around({ from, to }: Stretch, length: number): Stretch {
  const margin = Math.max(1, to - from);
  return panned({ from: from - margin, to: to + margin }, 0, length);
}

/** `sight`, moved just far enough to have some of `place` in it. */
export function following(sight: Stretch, place: Stretch, length: number): Stretch {
  if (place.to > sight.from && place.from < sight.to) return sight;
  return panned(sight, (place.from + place.to) / 2 - (sight.from + sight.to) / 2, length);
}

export interface Along {
  readonly sight: Stretch;
  readonly length: number;
  readonly whole: boolean;
  readonly set: (sight: Stretch) => void;
  /** 2 shows half as much, about the middle. */
  readonly zoom: (factor: number) => void;
  readonly reset: () => void;
}

export function useAlong(length: number): Along {
  const wished = useWear((state) => state.along);
  const { look } = useWearActions();
  // The webbing may have been cut since.
  const sight = wished ? panned(wished, 0, length) : fitRange(length);
  const set = (next: Stretch) => {
    const kept = notTooShort(next, length);
    look({ along: isFit(kept, length) ? undefined : kept });
  };
  return {
    sight,
    length,
    whole: isFit(sight, length),
    set,
    zoom: (factor) => set(zoomed(sight, factor, (sight.from + sight.to) / 2, length)),
    reset: () => look({ along: undefined }),
  };
}
