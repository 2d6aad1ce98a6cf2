import { type LessonId, type LessonRun, picturesOf } from "@secondline/workbench/lessons";
import { useEffect, useMemo, useState } from "react";
import { pageClock } from "../clock/pageClock.ts";
import { useStart } from "../clock/useStart.ts";

/** A clock of the lesson's own: the run on show plays from its start, or stands at its lowest point under reduced motion. */
export function useLessonClock(id: LessonId, before: LessonRun | undefined, after: LessonRun | undefined) {
  const [clock] = useState(() => pageClock({ duration: 0, speed: 1 / 4 }));
  const [chosen, show] = useState<"before" | "after">("before");
  const start = useStart(clock);
  useEffect(() => show(after ? "after" : "before"), [after]);
  const pictures = useMemo(() => picturesOf(id, before, after), [id, before, after]);
  const picture = pictures.find(({ which }) => which === chosen) ?? pictures[0];
  const recording = picture?.fall.recording;
  useEffect(() => {
    if (!recording) return;
    clock.setRun({ duration: recording.duration, frameStep: 1 / recording.frames.rate });
    start(recording);
    return () => clock.pause();
  }, [clock, recording, start]);
  return { clock, pictures, picture, show } as const;
}
