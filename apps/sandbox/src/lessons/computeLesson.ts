/** Computes one rig of a lesson: the fall for the eye, and what its parts hold. Knows no React. */
import type { RunnerService } from "@secondline/runner";
import { assessRig, type WhatIf } from "@secondline/scenarios";
import type { ReadRig, WrittenRig } from "../state/types.ts";
import { words } from "../words.ts";
import type { LessonRun } from "./facts.ts";

export type LessonWork =
  | { readonly kind: "idle" }
  | { readonly kind: "busy"; readonly done: number }
  | { readonly kind: "stopped" }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "done"; readonly run: LessonRun };

export interface LessonServices {
  readonly runner: Pick<RunnerService, "run" | "study" | "cancel">;
  readonly read: ReadRig;
}

export function cancelLesson(id: string, runner: LessonServices["runner"]): void {
  for (const part of ["fall", "parts"]) void runner.cancel(`${id}.${part}`);
}

/** The fall with its recording, then what its parts hold. */
export async function computeLesson(
  id: string,
  document: WrittenRig,
  whatIf: WhatIf,
  { runner, read }: LessonServices,
  onProgress: (done: number) => void = () => undefined,
): Promise<LessonWork> {
  const reading = read(document);
  if (!reading.ok) return { kind: "failed", message: reading.issues.map(({ message }) => message).join(" ") };
  const assessed = assessRig(reading.rig);
  let trouble = "";
  for (const accuracy of ACCURACIES) {
    const fall = await runner.run({ id: `${id}.fall`, assessed, whatIf, accuracy }, ({ done }) => onProgress(done / 2));
    if (!fall.ok) return notDone(fall);
    const { outcome, recording } = fall.value;
    if (!outcome.ok || !recording) {
      trouble = words.trouble(assessed.rig, outcome.trouble);
      continue;
    }
    const parts = await runner.study({ id: `${id}.parts`, assessed, whatIfs: [whatIf], accuracy }, ({ done }) =>
      onProgress(0.5 + done / 2),
    );
    if (!parts.ok) return notDone(parts);
    return { kind: "done", run: { assessed, outcome, recording, study: parts.value.outcome } };
  }
  return { kind: "failed", message: trouble };
}

/** A run whose numbers cannot be trusted is made again on a finer mesh before it is given up. */
const ACCURACIES = ["quick", "standard"] as const;

function notDone({ reason, message }: { reason: "cancelled" | "failed"; message: string }): LessonWork {
  return reason === "cancelled" ? { kind: "stopped" } : { kind: "failed", message };
}
