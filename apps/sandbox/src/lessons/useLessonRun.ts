import type { RunnerService } from "@secondline/runner";
import type { WhatIf } from "@secondline/scenarios";
import { useCallback, useEffect, useRef, useState } from "react";
import type { ReadRig, WrittenRig } from "../state/types.ts";
import type { LessonRun } from "./facts.ts";

export type LessonWork =
  | { readonly kind: "idle" }
  | { readonly kind: "busy"; readonly done: number }
  | { readonly kind: "stopped" }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "done"; readonly run: LessonRun };

interface Services {
  readonly runner: RunnerService;
  readonly read: ReadRig;
}

/** Runs one rig of a lesson when told to; a run that is left behind is cancelled. */
export function useLessonRun(document: WrittenRig, whatIf: WhatIf, { runner, read }: Services) {
  const [work, setWork] = useState<LessonWork>({ kind: "idle" });
  const current = useRef<string>(undefined);

  const stop = useCallback(() => {
    if (current.current === undefined) return;
    for (const part of PARTS) void runner.cancel(`${current.current}.${part}`);
    current.current = undefined;
    setWork({ kind: "stopped" });
  }, [runner]);

  const start = useCallback(async (): Promise<LessonRun | undefined> => {
    const id = crypto.randomUUID();
    current.current = id;
    setWork({ kind: "busy", done: 0 });
    const isCurrent = () => current.current === id;
    const answer = await compute(id, document, whatIf, { runner, read }, (done) => {
      if (isCurrent()) setWork({ kind: "busy", done });
    });
    if (!isCurrent()) return undefined;
    current.current = undefined;
    setWork(answer);
    return answer.kind === "done" ? answer.run : undefined;
  }, [document, whatIf, runner, read]);

  useEffect(
    () => () => {
      if (current.current !== undefined) for (const part of PARTS) void runner.cancel(`${current.current}.${part}`);
      current.current = undefined;
    },
    [runner],
  );
  return { work, start, stop };
}

const PARTS = ["fall", "parts"] as const;

/** The fall with its recording, then what its parts hold. */
async function compute(
  id: string,
  document: WrittenRig,
  whatIf: WhatIf,
  { runner, read }: Services,
  onProgress: (done: number) => void,
): Promise<LessonWork> {
  const reading = read(document);
  if (!reading.ok) return { kind: "failed", message: reading.issues.map(({ message }) => message).join(" ") };
  const { rig } = reading;
  let trouble = "";
  for (const accuracy of ACCURACIES) {
    const fall = await runner.run({ id: `${id}.fall`, rig, whatIf, accuracy }, ({ done }) => onProgress(done / 2));
    if (!fall.ok) return notDone(fall);
    const { outcome, recording } = fall.value;
    if (!outcome.ok || !recording) {
      trouble = outcome.problem ?? "";
      continue;
    }
    const parts = await runner.study({ id: `${id}.parts`, rig, whatIfs: [whatIf], accuracy }, ({ done }) =>
      onProgress(0.5 + done / 2),
    );
    return parts.ok ? { kind: "done", run: { rig, outcome, recording, study: parts.value } } : notDone(parts);
  }
  return { kind: "failed", message: trouble };
}

/** A run whose numbers cannot be trusted is made again on a finer mesh before it is given up. */
const ACCURACIES = ["quick", "standard"] as const;

function notDone({ reason, message }: { reason: "cancelled" | "failed"; message: string }): LessonWork {
  return reason === "cancelled" ? { kind: "stopped" } : { kind: "failed", message };
}
