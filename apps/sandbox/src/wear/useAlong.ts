/** The stretch of the webbing in sight: one for the ribbon, its lanes, the strength below, and what the calendar dims. */

import { fitRange, isFit, panned, zoomed } from "@secondline/figures/time";
import type { Stretch } from "@secondline/workbench";
import { notTooShort } from "@secondline/workbench/record";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";

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
