import { useCallback, useEffect, useRef, useState } from "react";
import {
  cancelLesson,
  computeLesson,
  type LessonQuestion,
  type LessonServices,
  type LessonWork,
} from "./computeLesson.ts";
import type { LessonRun } from "./facts.ts";

/** Runs one rig of a lesson when told to; a run that is left behind is cancelled. */
export function useLessonRun({ document, whatIf, times, sweep }: LessonQuestion, { runner, read }: LessonServices) {
  const [work, setWork] = useState<LessonWork>({ kind: "idle" });
  const current = useRef<string>(undefined);

  const stop = useCallback(() => {
    if (current.current === undefined) return;
    cancelLesson(current.current, runner);
    current.current = undefined;
    setWork({ kind: "stopped" });
  }, [runner]);

  const start = useCallback(async (): Promise<LessonRun | undefined> => {
    const id = crypto.randomUUID();
    current.current = id;
    setWork({ kind: "busy", done: 0 });
    const question = { document, whatIf, ...(times === undefined ? {} : { times }), ...(sweep ? { sweep } : {}) };
    const isCurrent = () => current.current === id;
    const answer = await computeLesson(id, question, { runner, read }, (done) => {
      if (isCurrent()) setWork({ kind: "busy", done });
    });
    if (!isCurrent()) return undefined;
    current.current = undefined;
    setWork(answer);
    return answer.kind === "done" ? answer.run : undefined;
  }, [document, whatIf, times, sweep, runner, read]);

  useEffect(
    () => () => {
      if (current.current !== undefined) cancelLesson(current.current, runner);
      current.current = undefined;
    },
    [runner],
  );
  return { work, start, stop };
}
