import type { ReadRig } from "@secondline/workbench";
import {
  givenFacts,
  LESSONS,
  type Lesson,
  type LessonPlace,
  onScale,
  prose,
  reasonWords,
  saidWords,
  say,
  type Try,
} from "@secondline/workbench/lessons";
import { Button } from "../design/Button.tsx";
import type { Theme } from "../design/palette.ts";
import styles from "./LessonPage.module.css";
import { LessonPicture } from "./LessonPicture.tsx";
import { LessonResult } from "./LessonResult.tsx";
import { PredictionForm } from "./PredictionForm.tsx";
import { useLesson, useStepFocus } from "./useLesson.ts";
import { useLessonClock } from "./useLessonClock.ts";
import { WorkState } from "./WorkState.tsx";

interface Props {
  lesson: Lesson;
  theme: Theme;
  wide: boolean;
  read: ReadRig;
  tries: readonly Try[];
  onTry: (one: Try) => void;
  onOpen: (place: LessonPlace | undefined) => void;
  /** Shown to a class: traces under the picture, and one line to point with in both. */
  inClass: boolean;
}

/** One lesson from top to bottom: what is given, the learner's prediction, the run beside it, why, and what is not told. */
export function LessonPage({ lesson, theme, wide, read, tries, onTry, onOpen, inClass }: Props) {
  const course = useLesson(lesson, read, onTry);
  const { before, after, guess, given, result, run } = course;
  const { clock, pictures, picture, show } = useLessonClock(lesson.id, given, result);
  const headings = useStepFocus(course);
  const { id, scale } = lesson;
  const was = given && lesson.read(given);
  return (
    <main className={wide ? styles.wide : styles.narrow}>
      <div className={styles.picture}>
        <LessonPicture
          {...{ clock, theme, wide, pictures, picture, show, inClass }}
          failed={before}
          along={lesson.along === true ? (picture?.which === "after" ? result : given) : undefined}
        />
      </div>
      <article className={styles.text}>
        <div className={styles.column}>
          <Button tone="quiet" icon="left" label={say("lesson.back")} onClick={() => onOpen(undefined)} />
          <header>
            <p className={styles.number}>{say("list.number", { number: LESSONS.indexOf(lesson) + 1 })}</p>
            <h2 ref={headings.title} className={styles.title} tabIndex={-1}>
              {say(`${id}.title`)}
            </h2>
          </header>
          <section aria-label={say("lesson.situation")}>
            {given ? (
              <p className={styles.prose}>{prose(`${id}.given`, givenFacts(given))}</p>
            ) : (
              <WorkState
                work={before}
                doing={say("lesson.computingBefore")}
                stop={() => course.stop("before")}
                retry={course.begin}
              />
            )}
          </section>
          {given && (
            <section className={styles.section}>
              <h3 ref={headings.prediction} className={styles.heading} tabIndex={-1}>
                {say("lesson.prediction")}
              </h3>
              <p className={styles.ask}>{prose(`${id}.ask`)}</p>
              {guess ? (
                <p className={styles.said}>
                  {say("lesson.youSaid", {
                    predicted: saidWords(guess.predicted, scale),
                    reason: reasonWords(lesson, guess),
                  })}
                </p>
              ) : (
                <PredictionForm
                  lesson={lesson}
                  given={was === undefined ? undefined : onScale(was, scale)}
                  earlier={tries.at(-1)}
                  onRun={(made) => void run(made)}
                />
              )}
            </section>
          )}
          {guess && !result && (
            <WorkState
              work={after}
              doing={say("lesson.computingAfter")}
              stop={() => course.stop("after")}
              retry={() => run(guess)}
            />
          )}
          {given && guess && result && (
            <>
              <LessonResult lesson={lesson} guess={guess} before={given} after={result} heading={headings.outcome} />
              <Onward
                lesson={lesson}
                onOpen={onOpen}
                onAgain={() => {
                  course.again();
                  show("before");
                }}
              />
            </>
          )}
        </div>
      </article>
    </main>
  );
}

interface OnwardProps {
  lesson: Lesson;
  onAgain: () => void;
  onOpen: (place: LessonPlace | undefined) => void;
}

/** Repeats the lesson, or goes on: to the next lesson, and from the last lesson to the predictions and results. */
function Onward({ lesson, onAgain, onOpen }: OnwardProps) {
  const next = LESSONS[LESSONS.indexOf(lesson) + 1];
  return (
    <footer className={styles.footer}>
      <Button label={say("lesson.again")} onClick={onAgain} />
      <Button
        tone="filled"
        label={next ? say("lesson.next", { title: say(`${next.id}.title`) }) : say("lesson.done")}
        onClick={() => onOpen(next?.id ?? "closing")}
      />
    </footer>
  );
}
