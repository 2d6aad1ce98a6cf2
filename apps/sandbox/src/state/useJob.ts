import { type Job, JobSlot } from "@secondline/workbench";
import { useEffect, useState } from "react";

/** A job of one component; it ends with it. */
export interface JobInHand<T, P> {
  readonly job: Job<T, P>;
  /** The value at hand: of this task or, until it has answered, of the one before. */
  readonly latest: T | undefined;
  readonly slot: JobSlot<T, P>;
}

export function useJob<T, P = undefined>(): JobInHand<T, P> {
  const [state, setState] = useState<Omit<JobInHand<T, P>, "slot">>({ job: { kind: "idle" }, latest: undefined });
  const [slot] = useState(
    () => new JobSlot<T, P>((job) => setState(({ latest }) => ({ job, latest: after(job, latest) }))),
  );
  useEffect(() => () => slot.rest("idle"), [slot]);
  return { ...state, slot };
}

function after<T, P>(job: Job<T, P>, before: T | undefined): T | undefined {
  if (job.kind === "done") return job.value;
  return job.kind === "failed" ? undefined : before;
}
