import { useEffect } from "react";
import type { PlaybackClock } from "../clock/playbackClock.ts";
import { type KeyAction, keyAction } from "../time/index.ts";

/** What types, chooses or opens something by its own keys. */
const KEEPS =
  "input, select, textarea, [role=menu], [role=listbox], [role=combobox], [role=radio], [role=tablist], [role=dialog]";
const PRESSED = "button, a, summary, [role=button]";

/** The keys of the time strip that play and seek, anywhere in a view that has one clock; pages of text keep theirs. */
export function usePlayKeys(clock: PlaybackClock): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.key === "PageUp" || event.key === "PageDown") return;
      const action = keyAction(event);
      if (!action || keeps(event.target, action) || !play(clock, action)) return;
      event.preventDefault();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [clock]);
}

function keeps(target: EventTarget | null, action: KeyAction): boolean {
  if (!(target instanceof Element)) return false;
  return target.closest(KEEPS) !== null || (action.do === "toggle" && target.closest(PRESSED) !== null);
}

/** False: it is no playing, and means something else or nothing here. */
function play(clock: PlaybackClock, action: KeyAction): boolean {
  const { duration } = clock.getSnapshot();
  if (duration === 0) return false;
  switch (action.do) {
    case "toggle":
      clock.toggle();
      return true;
    case "start":
      clock.seek(0);
      return true;
    case "end":
      clock.seek(duration);
      return true;
    case "seek":
      clock.seekBy(action.size, action.direction);
      return true;
    case "frame":
      clock.stepFrame(action.direction);
      return true;
    default:
      return false;
  }
}
