import type { ReadRig } from "@secondline/workbench";
import { judgement, type Lesson, onScale, resultWords, saidWords, say, type Try } from "@secondline/workbench/lessons";
import { useEffect, useRef, useState } from "react";
import { useActions } from "../state/useSandbox.ts";
import { pageRunner } from "../worker/runner.ts";
import type { Guess } from "./Prediction.tsx";
import { useLessonRun } from "./useLessonRun.ts";

/** The way through one lesson: what is given is computed at once, what is asked about when a prediction was made. */
export function useLesson(lesson: Lesson, read: ReadRig, onTry: (one: Try) => void) {
  const { announce } = useActions();
  const [guess, setGuess] = useState<Guess>();
  // The one that looks waits for it: it does not give way to the search for the verdict.
  const services = { runner: pageRunner(), read };
  const { whatIf, times, sweep } = lesson;
  const before = useLessonRun({ document: lesson.before, whatIf }, services);
  const asked = { document: lesson.after, whatIf, ...(times ? { times } : {}), ...(sweep ? { sweep } : {}) };
  const after = useLessonRun(asked, services);
  const { start: startBefore } = before;
  useEffect(() => {
    void startBefore();
  }, [startBefore]);

  async function run(next: Guess): Promise<void> {
    setGuess(next);
    const done = await after.start();
    if (!done) return;
    const value = lesson.read(done);
    const result = value === undefined ? undefined : onScale(value, lesson.scale);
    onTry(tryOf(next, result));
    if (result !== undefined) announce(spoken(lesson, next.predicted, result));
  }
  return {
    before,
    after,
    guess,
    given: before.work.kind === "done" ? before.work.value : undefined,
    result: guess && after.work.kind === "done" ? after.work.value : undefined,
    run,
    again: () => setGuess(undefined),
  };
}

function tryOf({ predicted, reason, ownReason }: Guess, result: number | undefined): Try {
  return {
    predicted,
    ...(reason === undefined ? {} : { reason }),
    ...(ownReason === "" ? {} : { ownReason }),
    ...(result === undefined ? {} : { result }),
    when: Date.now(),
  };
}

/** For those who hear the page. */
function spoken({ scale }: Lesson, predicted: number, result: number): string {
  const words = resultWords(result, scale);
  const judged = judgement(predicted, result, words);
  return say("announce.result", { predicted: saidWords(predicted, scale), result: words, judgement: judged });
}

/** What had the focus is gone after a step: it goes on to the heading of what came. */
export function useStepFocus({ guess, result }: ReturnType<typeof useLesson>) {
  const title = useRef<HTMLHeadingElement>(null);
  const prediction = useRef<HTMLHeadingElement>(null);
  const outcome = useRef<HTMLHeadingElement>(null);
  const begun = useRef(false);
  useEffect(() => title.current?.focus(), []);
  useEffect(() => {
    if (guess) begun.current = true;
    if (begun.current) goTo(prediction.current);
  }, [guess]);
  useEffect(() => {
    if (result) goTo(outcome.current);
  }, [result]);
  return { title, prediction, outcome };
}

function goTo(heading: HTMLElement | null): void {
  heading?.focus({ preventScroll: true });
  heading?.scrollIntoView({ block: "start" });
}
