import type { Recording } from "@secondline/engine";
import type { PlaybackClock } from "@secondline/workbench";
import { useCallback } from "react";
import { useReducedMotion } from "../design/useMedia.ts";

/** Plays a run from its start; under reduced motion nothing moves by itself, and it stands at its lowest point. */
export function useStart(clock: PlaybackClock): (run: Recording) => void {
  const still = useReducedMotion();
  return useCallback(
    (run) => {
      clock.seek(still ? run.walker.lowestTime : 0);
      if (!still) clock.play();
    },
    [clock, still],
  );
}
