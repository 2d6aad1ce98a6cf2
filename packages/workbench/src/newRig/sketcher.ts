/** Works out a rig at rest while it is still being described, the walker standing in the middle. */
import type { Recording } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { assessRig } from "@secondline/scenarios";
import type { Services } from "../inHand/state.ts";

export interface Sketched {
  readonly rig: Rig;
  readonly recording: Recording;
}

/** A change waits this long for the next one, so that typing does not start a run per letter [ms]. */
const SETTLE_MS = 250;
/** Enough for the rig at rest with the walker on it; nobody falls here [s]. */
const SKETCH_DURATION = 0.02;

/** How the rig lies is shown, not what holds: of a part of which nothing is known yet, nothing can be counted on. */
const isNoBreak = ({ kind }: Recording["events"][number]): boolean => kind !== "break";

/** Hands the sketch to `put` when it is made; returns what leaves it, made or not. */
export function sketch(
  rig: Rig,
  { runner, newId, later }: Pick<Services, "runner" | "newId" | "later">,
  put: (sketched: Sketched) => void,
): () => void {
  const id = newId();
  let left = false;
  async function make(): Promise<void> {
    const whatIf = { kind: "leashFall", at: 0.5 } as const;
    const request = { id, assessed: assessRig(rig), whatIf, accuracy: "quick", duration: SKETCH_DURATION } as const;
    const answer = await runner.run(request);
    const recording = answer.ok ? answer.value.recording : undefined;
    if (!left && recording) put({ rig, recording: { ...recording, events: recording.events.filter(isNoBreak) } });
  }
  const cancel = later(SETTLE_MS, () => void make());
  return () => {
    left = true;
    cancel();
    void runner.cancel(id);
  };
}
