import type { Recording } from "@secondline/engine";
import { type EventMark, eventMarks, fitRange, rangeShowing, type TimeRange } from "@secondline/figures/time";
import type { BreaksTold } from "@secondline/words";
import { type KeyAction, keyAction, type PlaybackClock, stripDoes } from "@secondline/workbench";
import { useCallback, useEffect, useMemo, useState } from "react";
import { keepsKey } from "./keepsKey.ts";

/** What the strip shows of the run, and everything that button, key or touch can do with the strip. */
export interface TimeView {
  readonly marks: readonly EventMark[];
  readonly range: TimeRange;
  readonly setRange: (range: TimeRange) => void;
  /** The second cursor [s]; null: none. */
  readonly measure: number | null;
  readonly setMeasure: (time: number | null) => void;
  readonly act: (action: KeyAction) => void;
}

export function useTimeView(recording: Recording, clock: PlaybackClock, told?: BreaksTold): TimeView {
  const { duration } = recording;
  const marks = useMemo(() => eventMarks(recording, told), [recording, told]);
  const [range, setRange] = useState(() => fitRange(duration));
  const [measure, setMeasure] = useState<number | null>(null);
  const [fitted, setFitted] = useState(duration);
  // Another run: its whole length is shown, and an old measure means nothing there.
  if (fitted !== duration) {
    setFitted(duration);
    setRange(fitRange(duration));
    setMeasure(null);
  }

  useFollowing(clock, duration, setRange);

  const act = useCallback(
    (action: KeyAction) => stripDoes({ clock, recording, marks, measure, setMeasure, setRange }, action),
    [clock, marks, measure, recording],
  );
  return { marks, range, setRange, measure, setMeasure, act };
}

/**
 * Moves the range along when the cursor leaves it; nothing is rendered before. A hook of its own: what is subscribed here
 * outlives runs of the same length, and would hold the recording that it was made beside.
 */
function useFollowing(
  clock: PlaybackClock,
  duration: number,
  setRange: React.Dispatch<React.SetStateAction<TimeRange>>,
) {
  useEffect(() => {
    const follow = () => {
      const { time, playing } = clock.getSnapshot();
      setRange((shown) => rangeShowing(shown, time, duration, playing));
    };
    return clock.subscribe(follow);
  }, [clock, duration, setRange]);
}

/** Keys of the strip, wherever in it the focus is; what types or presses for itself keeps its own keys. */
export function stripKeys(act: (action: KeyAction) => void): (event: React.KeyboardEvent) => void {
  return (event) => {
    const action = keyAction(event);
    if (!action || event.defaultPrevented || keepsKey(event.target as Element, action)) return;
    event.preventDefault();
    act(action);
  };
}
