import { useEffect, useRef, useState } from "react";
import { Button } from "../design/Button.tsx";
import type { Theme } from "../design/palette.ts";
import type { ReadRig } from "../state/types.ts";
import { useActions } from "../state/useSandbox.ts";
import { sideRunner } from "../worker/sideRunner.ts";
import { givenFacts } from "./facts.ts";
import { judgement } from "./judge.ts";
import type { Try } from "./kept.ts";
import styles from "./LessonPage.module.css";
import { LessonPicture } from "./LessonPicture.tsx";
import { LessonResult } from "./LessonResult.tsx";
import { LESSONS, type Lesson, type LessonId } from "./lessons.ts";
import { type Guess, Prediction, reasonWords } from "./Prediction.tsx";
import { onScale, scaleWords } from "./quantity.ts";
import { useLessonClock } from "./useLessonClock.ts";
import { useLessonRun } from "./useLessonRun.ts";
import { WorkState } from "./WorkState.tsx";
import { say } from "./words.ts";

interface Props {
  lesson: Lesson;
  theme: Theme;
  wide: boolean;
  read: ReadRig;
  tries: readonly Try[];
  onTry: (one: Try) => void;
  onOpen: (id: LessonId | undefined) => void;
}

/** One lesson from top to bottom: what is given, the learner's prediction, the run beside it, why, and what is not told. */
export function LessonPage({ lesson, theme, wide, read, tries, onTry, onOpen }: Props) {
  const { announce } = useActions();
  const [guess, setGuess] = useState<Guess>();
  const heading = useRef<HTMLHeadingElement>(null);
  const predictionHeading = useRef<HTMLHeadingElement>(null);
  const resultHeading = useRef<HTMLHeadingElement>(null);
  const services = { runner: sideRunner(), read };
  const before = useLessonRun(lesson.before, lesson.whatIf, services);
  const after = useLessonRun(lesson.after, lesson.whatIf, services);
  const { start: startBefore } = before;
  useEffect(() => {
    heading.current?.focus();
    void startBefore();
  }, [startBefore]);
  const given = before.work.kind === "done" ? before.work.run : undefined;
  const result = guess && after.work.kind === "done" ? after.work.run : undefined;
  const { clock, shown, show } = useLessonClock(given, result);
  // What had the focus is gone after a step: it goes on to the heading of what came.
  const begun = useRef(false);
  useEffect(() => {
    if (guess) begun.current = true;
    if (begun.current) goTo(predictionHeading.current);
  }, [guess]);
  useEffect(() => {
    if (result) goTo(resultHeading.current);
  }, [result]);

  async function run(next: Guess): Promise<void> {
    setGuess(next);
    const done = await after.start();
    const value = done && lesson.read(done);
    if (!done) return;
    const number = value === undefined ? undefined : onScale(value, lesson.scale);
    const { predicted, reason, ownReason } = next;
    onTry({
      predicted,
      ...(reason === undefined ? {} : { reason }),
      ...(ownReason === "" ? {} : { ownReason }),
      ...(number === undefined ? {} : { result: number }),
      when: Date.now(),
    });
    if (number !== undefined) {
      const words = scaleWords(number, lesson.scale);
      const judged = judgement(predicted, number, words);
      announce(
        say("announce.result", { predicted: scaleWords(predicted, lesson.scale), result: words, judgement: judged }),
      );
    }
  }

  const index = LESSONS.indexOf(lesson);
  const next = LESSONS[index + 1];
  return (
    <main className={wide ? styles.wide : styles.narrow}>
      <div className={styles.picture}>
        <LessonPicture {...{ clock, theme, shown, show }} before={given} after={result} failed={before.work} />
      </div>
      <article className={styles.text}>
        <div className={styles.column}>
          <Button tone="quiet" icon="left" label={say("lesson.back")} onClick={() => onOpen(undefined)} />
          <header>
            <p className={styles.number}>{say("list.number", { number: index + 1 })}</p>
            <h2 ref={heading} className={styles.title} tabIndex={-1}>
              {say(`${lesson.id}.title`)}
            </h2>
          </header>
          <section aria-label={say("lesson.situation")}>
            {given ? (
              <p className={styles.prose}>{say(`${lesson.id}.given`, givenFacts(given))}</p>
            ) : (
              <WorkState
                work={before.work}
                doing={say("lesson.computingBefore")}
                stop={before.stop}
                retry={startBefore}
              />
            )}
          </section>
          {given && (
            <section className={styles.section}>
              <h3 ref={predictionHeading} className={styles.heading} tabIndex={-1}>
                {say("lesson.prediction")}
              </h3>
              <p className={styles.ask}>{say(`${lesson.id}.ask`)}</p>
              {guess ? (
                <p className={styles.said}>
                  {say("lesson.youSaid", {
                    predicted: scaleWords(guess.predicted, lesson.scale),
                    reason: reasonWords(lesson.id, guess),
                  })}
                </p>
              ) : (
                <Prediction lesson={lesson} earlier={tries.at(-1)} onRun={(made) => void run(made)} />
              )}
            </section>
          )}
          {guess && !result && (
            <WorkState
              work={after.work}
              doing={say("lesson.computingAfter")}
              stop={after.stop}
              retry={() => run(guess)}
            />
          )}
          {given && guess && result && (
            <>
              <LessonResult lesson={lesson} guess={guess} before={given} after={result} heading={resultHeading} />
              <footer className={styles.footer}>
                <Button
                  label={say("lesson.again")}
                  onClick={() => {
                    setGuess(undefined);
                    show("before");
                  }}
                />
                {next && (
                  <Button
                    tone="filled"
                    label={say("lesson.next", { title: say(`${next.id}.title`) })}
                    onClick={() => onOpen(next.id)}
                  />
                )}
              </footer>
            </>
          )}
        </div>
      </article>
    </main>
  );
}

function goTo(heading: HTMLElement | null): void {
  heading?.focus({ preventScroll: true });
  heading?.scrollIntoView({ block: "start" });
}
