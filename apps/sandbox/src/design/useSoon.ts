import { useEffect, useState } from "react";

/** Long enough for one part to be drawn before the next one begins, too short to be noticed [ms]. */
const PAUSE_MS = 20;

/**
 * True a moment after `there` is, and false at once when it is not. What has much to draw when it first appears waits
 * its `turn`, so that the page does not stand still for all of them together.
 */
export function useSoon(there: boolean, turn: number): boolean {
  const [soon, setSoon] = useState(false);
  useEffect(() => {
    if (!there) return;
    const timer = setTimeout(() => setSoon(true), turn * PAUSE_MS);
    return () => {
      clearTimeout(timer);
      setSoon(false);
    };
  }, [there, turn]);
  return there && soon;
}
