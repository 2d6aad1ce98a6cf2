import type { Job } from "@secondline/workbench";
import {
  cancelLesson,
  computeLesson,
  type LessonQuestion,
  type LessonRun,
  type LessonServices,
} from "@secondline/workbench/lessons";
import { useCallback } from "react";
import { useJob } from "../state/useJob.ts";

export type LessonJob = Job<LessonRun, LessonProgress>;
export interface LessonProgress {
  /** 0 to 1 [-] */
  readonly done: number;
}

/** Runs one rig of a lesson when told to; a run that is left behind is cancelled. */
export function useLessonRun({ document, whatIf, times, sweep }: LessonQuestion, { runner, read }: LessonServices) {
  const { job, slot } = useJob<LessonRun, LessonProgress>();
  const stop = useCallback(() => slot.stop(), [slot]);
  const start = useCallback(async (): Promise<LessonRun | undefined> => {
    const id = crypto.randomUUID();
    const question = { document, whatIf, ...(times === undefined ? {} : { times }), ...(sweep ? { sweep } : {}) };
    return slot.run({
      begun: { done: 0 },
      run: (tell) => computeLesson(id, question, { runner, read }, (done) => tell({ done })),
      cancel: () => cancelLesson(id, runner),
    });
  }, [document, whatIf, times, sweep, runner, read, slot]);
  return { work: job, start, stop };
}
