import type { PlaybackClock } from "@secondline/workbench";
import { useEffect, useRef } from "react";
import { useRecordings, useSandbox } from "../state/useSandbox.ts";
import { useStart } from "./useStart.ts";

/**
 * Hands every new run to the clock. Another what-if plays from its start; a changed rig keeps the moment, so that the
 * eye can compare.
 */
export function useRunClock(clock: PlaybackClock, firstTime: number | undefined): void {
  const { current } = useRecordings();
  const whatIf = useSandbox((state) => state.run.shown?.whatIf);
  const start = useStart(clock);
  const seen = useRef<{ whatIf: unknown; first: boolean }>({ whatIf: undefined, first: true });
  useEffect(() => {
    if (!current) return;
    clock.setRun({ duration: current.duration, frameStep: 1 / current.frames.rate });
    const { first, whatIf: before } = seen.current;
    seen.current = { whatIf, first: false };
    if (first && firstTime !== undefined) {
      clock.seek(firstTime);
      return;
    }
    if (before !== whatIf) start(current);
  }, [clock, current, whatIf, start, firstTime]);
}
