import type { Recording } from "@secondline/engine";
import {
  eventMarks,
  eventRange,
  fitRange,
  type Mark,
  neighbouringMark,
  rangeShowing,
  type TimeRange,
  zoomed,
} from "@secondline/figures/time";
import type { BreaksTold } from "@secondline/words";
import { type KeyAction, keyAction, type PlaybackClock } from "@secondline/workbench";
import { useCallback, useEffect, useMemo, useState } from "react";

/** What the strip shows of the run, and everything that can be asked of it by button, key or touch. */
export interface TimeView {
  readonly marks: readonly Mark[];
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
    (action: KeyAction) => {
      const { time, loop } = clock.getSnapshot();
      switch (action.do) {
        case "toggle":
          return clock.toggle();
        case "start":
          return clock.seek(0);
        case "end":
          return clock.seek(duration);
        case "seek":
          return clock.seekBy(action.size, action.direction);
        case "frame":
          return clock.stepFrame(action.direction);
        case "mark": {
          const mark = neighbouringMark(marks, time, action.direction);
          return clock.seek(mark?.time ?? (action.direction > 0 ? duration : 0));
        }
        case "loop":
          return clock.setLoop(loop === null ? rangeToRepeat(recording, time, measure) : null);
        case "measure":
          return setMeasure(measure === null ? time : null);
        case "zoom":
          return setRange((shown) => zoomed(shown, action.direction > 0 ? 2 : 0.5, time, duration));
        case "fit":
          return setRange(fitRange(duration));
      }
    },
    [clock, duration, marks, measure, recording],
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

/** Between the two cursors when there are two; else around the event. */
function rangeToRepeat(recording: Recording, time: number, measure: number | null): TimeRange {
  if (measure === null || measure === time) return eventRange(recording);
  return { from: Math.min(time, measure), to: Math.max(time, measure) };
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

function keepsKey(target: Element, action: KeyAction): boolean {
  if (target.closest("input, select, textarea, [role=menu], [role=listbox], [role=combobox], [role=tablist]"))
    return true;
  return action.do === "toggle" && target.closest("button, a, summary, [role=button]") !== null;
}
