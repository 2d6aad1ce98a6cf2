import { type KeyAction, keyAction, type PlaybackClock } from "@secondline/workbench";
import { useEffect } from "react";

/**
 * The keys of the time strip where there is no strip, or the focus is not in it: Space plays, arrows and their kin move
 * in time. What has keys of its own keeps them.
 */
export function useClockKeys(clock: PlaybackClock): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      // Pages of text are turned by their own keys.
      if (event.defaultPrevented || event.key === "PageUp" || event.key === "PageDown") return;
      const action = keyAction(event);
      if (!action || !isFree(event.target, action) || !act(clock, action)) return;
      event.preventDefault();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [clock]);
}

/** What types, chooses or opens something by its own keys, and what scrolls by them. */
const KEEPS =
  "input, select, textarea, [role=menu], [role=listbox], [role=combobox], [role=radio], [role=tablist], [role=dialog], section[tabindex='0']";
const PRESSED = "button, a, summary, [role=button]";

function isFree(target: EventTarget | null, action: KeyAction): boolean {
  if (!(target instanceof Element) || target.closest(KEEPS)) return false;
  return action.do !== "toggle" || target.closest(PRESSED) === null;
}

/** True when the action is one of the clock's own. */
function act(clock: PlaybackClock, action: KeyAction): boolean {
  const { duration } = clock.getSnapshot();
  if (duration === 0) return false;
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
      clock.seek(duration);
      return true;
    default:
      return false;
  }
}
