import type { PlaybackClock } from "./playbackClock.ts";
import type { KeyAction } from "./timeKeys.ts";

/** Does what is the clock's own to do; false for everything else. */
export function clockDoes(clock: PlaybackClock, action: KeyAction): boolean {
  switch (action.do) {
    case "toggle":
      clock.toggle();
      return true;
    case "seek":
      clock.seekBy(action.size, action.direction);
      return true;
    case "frame":
      clock.stepFrame(action.direction);
      return true;
    case "start":
      clock.seek(0);
      return true;
    case "end":
      clock.seek(clock.getSnapshot().duration);
      return true;
    default:
      return false;
  }
}
