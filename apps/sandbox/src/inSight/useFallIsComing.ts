import { useSandbox } from "../state/useSandbox.ts";

/** Whether a fall is still to be expected where none is there to show: it computes, or nothing was computed yet. */
export const useFallIsComing = (): boolean =>
  useSandbox(({ run: { fall, shown } }) =>
    fall.kind === "idle" || fall.kind === "done" ? !shown : fall.kind === "waiting" || fall.kind === "busy",
  );
