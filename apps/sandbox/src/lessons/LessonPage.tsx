import { useEffect, useRef, useState } from "react";
import { createPlaybackClock } from "../clock/playbackClock.ts";
import { Button } from "../design/Button.tsx";
import { Meter } from "../design/Meter.tsx";
import type { Theme } from "../design/palette.ts";
import { useReducedMotion } from "../page/useMedia.ts";
import type { ReadRig } from "../state/types.ts";
import { useActions } from "../state/useSandbox.ts";
import { sideRunner } from "../worker/sideRunner.ts";
import type { LessonWork } from "./computeLesson.ts";
import { allFacts, givenFacts, type LessonRun } from "./facts.ts";
import { judgement } from "./judge.ts";
import type { Try } from "./kept.ts";
import styles from "./LessonPage.module.css";
import { LessonPicture } from "./LessonPicture.tsx";
import { LESSONS, type Lesson, type LessonId } from "./lessons.ts";
import { type Guess, Prediction, reasonWords } from "./Prediction.tsx";
import { onScale, scaleWords } from "./quantity.ts";
import { ResultBars } from "./ResultBars.tsx";
import { useLessonRun } from "./useLessonRun.ts";
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
    resultHeading.current?.focus({ preventScroll: true });
    resultHeading.current?.scrollIntoView({ block: "start" });
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
              <h3 className={styles.heading}>{say("lesson.prediction")}</h3>
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
              <Result lesson={lesson} guess={guess} before={given} after={result} heading={resultHeading} />
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

interface WorkProps {
  work: LessonWork;
  doing: string;
  stop: () => void;
  retry: () => unknown;
}

function WorkState({ work, doing, stop, retry }: WorkProps) {
  if (work.kind === "busy") {
    return (
      <div className={styles.busy}>
        <Meter done={work.done} doing={doing} />
        <Button icon="stop" label={say("lesson.stop")} onClick={stop} />
      </div>
    );
  }
  if (work.kind !== "stopped" && work.kind !== "failed") return null;
  return (
    <div className={styles.busy} role={work.kind === "failed" ? "alert" : undefined}>
      <p>{work.kind === "failed" ? say("lesson.failed", { message: work.message }) : say("lesson.stopped")}</p>
      <Button label={say("lesson.retry")} onClick={() => void retry()} />
    </div>
  );
}

interface ResultProps {
  lesson: Lesson;
  guess: Guess;
  before: LessonRun;
  after: LessonRun;
  heading: React.RefObject<HTMLHeadingElement | null>;
}

function Result({ lesson, guess, before, after, heading }: ResultProps) {
  const { id, scale } = lesson;
  const facts = allFacts(before, after);
  const value = lesson.read(after);
  const was = lesson.read(before);
  const result = value === undefined ? undefined : onScale(value, scale);
  return (
    <>
      <section className={styles.section}>
        <h3 ref={heading} className={styles.heading} tabIndex={-1}>
          {say("lesson.result")}
        </h3>
        {result === undefined ? (
          <p className={styles.prose}>{say("lesson.noNumber")}</p>
        ) : (
          <>
            <p className={styles.judged}>{judgement(guess.predicted, result, scaleWords(result, scale))}</p>
            <ResultBars
              scale={scale}
              predicted={guess.predicted}
              result={result}
              given={was === undefined ? undefined : onScale(was, scale)}
            />
          </>
        )}
      </section>
      <section className={styles.section}>
        <h3 className={styles.heading}>{say("lesson.why")}</h3>
        <p className={styles.prose}>{say(lesson.why?.(after) ?? (`${id}.why` as "noBackup.why"), facts)}</p>
      </section>
      <section className={styles.section}>
        <h3 className={styles.heading}>{say("lesson.summary")}</h3>
        <p className={styles.summary}>{say(`${id}.summary`, facts)}</p>
      </section>
      <section className={styles.section}>
        <h3 className={styles.heading}>{say("lesson.notTold")}</h3>
        <p className={styles.prose}>{say(`${id}.notTold`, facts)}</p>
      </section>
    </>
  );
}

/** A clock of the lesson's own: the run on show plays from its start, or stands at its lowest point under reduced motion. */
function useLessonClock(before: LessonRun | undefined, after: LessonRun | undefined) {
  const [clock] = useState(() => createPlaybackClock({ duration: 0, speed: 1 / 4 }));
  const [chosen, show] = useState<"before" | "after">("before");
  const still = useReducedMotion();
  useEffect(() => show(after ? "after" : "before"), [after]);
  const shown = chosen === "after" && after ? "after" : "before";
  const recording = (shown === "after" ? after : before)?.recording;
  useEffect(() => {
    if (!recording) return;
    clock.setRun({ duration: recording.duration, frameStep: 1 / recording.frames.rate });
    clock.seek(still ? recording.walker.lowestTime : 0);
    if (!still) clock.play();
    return () => clock.pause();
  }, [clock, recording, still]);
  return { clock, shown, show } as const;
}
