import { clockDoes, type KeyAction, keyAction, type PlaybackClock } from "@secondline/workbench";
import { useEffect } from "react";
import { keepsKey } from "./keepsKey.ts";

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
      if (!action || !isFree(event.target, action) || clock.getSnapshot().duration === 0 || !clockDoes(clock, action))
        return;
      event.preventDefault();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [clock]);
}

/** What scrolls by its keys, and dialogs. */
const OTHERS = "[role=radio], [role=dialog], section[tabindex='0']";

function isFree(target: EventTarget | null, action: KeyAction): boolean {
  return target instanceof Element && !keepsKey(target, action, OTHERS);
}
