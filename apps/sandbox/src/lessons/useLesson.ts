import type { ReadRig } from "@secondline/workbench";
import { createLessonDesk, type Lesson, lessonRuns, type Try } from "@secondline/workbench/lessons";
import { useEffect, useRef, useState } from "react";
import { useStore } from "zustand";
import { useActions } from "../state/useSandbox.ts";
import { pageRunner } from "../worker/runner.ts";

/** The way through one lesson; what it computes ends with it. */
export function useLesson(lesson: Lesson, read: ReadRig, onTry: (one: Try) => void) {
  const { announce } = useActions();
  const [desk] = useState(() =>
    createLessonDesk(lesson, {
      // The one that looks waits for it: it does not give way to the search for the verdict.
      runner: pageRunner(),
      read,
      newId: () => crypto.randomUUID(),
      now: Date.now,
      onTry,
      announce,
    }),
  );
  useEffect(() => {
    desk.begin();
    return desk.leave;
  }, [desk]);
  const state = useStore(desk.store);
  return { ...desk, ...state, ...lessonRuns(state) };
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
