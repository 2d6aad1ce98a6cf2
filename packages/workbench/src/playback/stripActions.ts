/** What buttons and keys ask of the time strip, done. */
import type { Recording } from "@secondline/engine";
import {
  type EventMark,
  eventRange,
  fitRange,
  neighbouringMark,
  type TimeRange,
  zoomed,
} from "@secondline/figures/time";
import { clockDoes } from "./clockDoes.ts";
import type { PlaybackClock } from "./playbackClock.ts";
import type { KeyAction } from "./timeKeys.ts";

export interface Strip {
  readonly clock: PlaybackClock;
  readonly recording: Recording;
  readonly marks: readonly EventMark[];
  /** The second cursor [s]; null: none. */
  readonly measure: number | null;
  readonly setMeasure: (time: number | null) => void;
  readonly setRange: (to: (shown: TimeRange) => TimeRange) => void;
}

export function stripDoes({ clock, recording, marks, measure, setMeasure, setRange }: Strip, action: KeyAction): void {
  if (clockDoes(clock, action)) return;
  const { duration } = recording;
  const { time, loop } = clock.getSnapshot();
  switch (action.do) {
    case "mark": {
      const mark = neighbouringMark(marks, time, action.direction);
      clock.seek(mark?.time ?? (action.direction > 0 ? duration : 0));
      break;
    }
    case "loop":
      clock.setLoop(loop === null ? rangeToRepeat(recording, time, measure) : null);
      break;
    case "measure":
      setMeasure(measure === null ? time : null);
      break;
    case "zoom":
      setRange((shown) => zoomed(shown, action.direction > 0 ? 2 : 0.5, time, duration));
      break;
    case "fit":
      setRange(() => fitRange(duration));
  }
}

/** Between the two cursors when there are two; else around the event. */
function rangeToRepeat(recording: Recording, time: number, measure: number | null): TimeRange {
  if (measure === null || measure === time) return eventRange(recording);
  return { from: Math.min(time, measure), to: Math.max(time, measure) };
}
