import type { Recording } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { assessRig } from "@secondline/scenarios";
import { useEffect, useState } from "react";
import { pageRunner } from "../worker/runner.ts";

export interface Sketched {
  readonly rig: Rig;
  readonly recording: Recording;
}

/** A change waits this long for the next one, so that typing does not start a run per letter [ms]. */
const SETTLE_MS = 250;
/** Enough for the rig at rest with the walker on it; nobody falls here [s]. */
const SKETCH_DURATION = 0.02;

/** The rig at rest, the walker standing in the middle; the last one that there was while another is worked out, or is none. */
export function useSketch(rig: Rig | undefined): Sketched | undefined {
  const [sketched, setSketched] = useState<Sketched>();
  useEffect(() => {
    if (!rig) return undefined;
    const id = crypto.randomUUID();
    let left = false;
    const timer = setTimeout(async () => {
      const whatIf = { kind: "leashFall", at: 0.5 } as const;
      const request = { id, assessed: assessRig(rig), whatIf, accuracy: "quick", duration: SKETCH_DURATION } as const;
      const answer = await pageRunner().run(request);
      const recording = answer.ok ? answer.value.recording : undefined;
      if (!left && recording) setSketched({ rig, recording });
    }, SETTLE_MS);
    return () => {
      left = true;
      clearTimeout(timer);
      void pageRunner().cancel(id);
    };
  }, [rig]);
  return sketched;
}
