import { type ClockState, type PlaybackClock, throttled } from "@secondline/workbench";
import { useCallback, useMemo, useSyncExternalStore } from "react";

/** Text that follows a playing clock is readable at ten changes a second; more would only cost frames [ms]. */
export const TEXT_INTERVAL_MS = 100;

/**
 * A value of the clock as React state, renewed at most every `interval` milliseconds while time runs.
 * For words and numbers only: what moves with every frame subscribes to the clock and moves its own pixels.
 */
export function useClock<T>(clock: PlaybackClock, selector: (state: ClockState) => T, interval = TEXT_INTERVAL_MS): T {
  const subscribe = useCallback(
    (listener: () => void) => {
      const calm = throttled(listener, interval);
      const unsubscribe = clock.subscribe(calm.call);
      return () => {
        unsubscribe();
        calm.cancel();
      };
    },
    [clock, interval],
  );
  const select = useMemo(() => remembered(selector), [selector]);
  const getSnapshot = () => select(clock.getSnapshot());
  return useSyncExternalStore(subscribe, getSnapshot, getSnapshot);
}

/** The same state gives the same object, as React asks of a snapshot. */
function remembered<T>(selector: (state: ClockState) => T): (state: ClockState) => T {
  let last: { readonly state: ClockState; readonly value: T } | null = null;
  return (state) => {
    if (last === null || last.state !== state) last = { state, value: selector(state) };
    return last.value;
  };
}
