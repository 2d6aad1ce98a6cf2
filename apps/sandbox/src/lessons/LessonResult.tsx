import {
  allFacts,
  type Guess,
  judgement,
  type Lesson,
  type LessonRun,
  lessonResultWords,
  onScale,
  prose,
  say,
  storyOf,
  type WordKey,
} from "@secondline/workbench/lessons";
import { quantity } from "../words.ts";
import { DotStrip } from "./DotStrip.tsx";
import styles from "./LessonPage.module.css";
import { ResultBars } from "./ResultBars.tsx";
import { SweepCurve } from "./SweepCurve.tsx";

interface ResultProps {
  lesson: Lesson;
  guess: Guess;
  before: LessonRun;
  after: LessonRun;
  heading: React.RefObject<HTMLHeadingElement | null>;
}

/** The prediction beside the run, then why, what it comes to, and what it does not tell. */
export function LessonResult({ lesson, guess, before, after, heading }: ResultProps) {
  const { id, scale } = lesson;
  const facts = allFacts(before, after);
  const value = lesson.read(after);
  const was = lesson.read(before);
  const went = lesson.went(before, after);
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
            <p className={styles.judged}>
              {quantity.unbroken(judgement(guess.predicted, result, lessonResultWords(result, scale)))}
            </p>
            <ResultBars
              scale={scale}
              predicted={guess.predicted}
              result={result}
              given={was === undefined ? undefined : onScale(was, scale)}
            />
          </>
        )}
        <DotStrip before={before} after={after} />
        <SweepCurve before={before} after={after} />
        {!after.many && !after.swept && <p className={styles.prose}>{quantity.unbroken(storyOf(after))}</p>}
        {!went && <p className={styles.prose}>{say("lesson.otherwise")}</p>}
      </section>
      {went && <Explained {...{ lesson, guess, after, facts }} />}
      <section className={styles.section}>
        <h3 className={styles.heading}>{say("lesson.notTold")}</h3>
        <p className={styles.prose}>{prose(`${id}.notTold`, facts)}</p>
        <p className={styles.mesh}>{say("lesson.mesh")}</p>
      </section>
    </>
  );
}

interface ExplainedProps extends Pick<ResultProps, "lesson" | "guess" | "after"> {
  facts: ReturnType<typeof allFacts>;
}

/** Why it went so, and what it comes to: only where it went as the texts say. */
function Explained({ lesson, guess, after, facts }: ExplainedProps) {
  const { id } = lesson;
  return (
    <>
      <section className={styles.section}>
        <h3 className={styles.heading}>{say("lesson.why")}</h3>
        {guess.reason !== undefined && (
          <p className={styles.prose}>
            <b className={styles.reply}>{say("lesson.yourReason")}</b> {prose(`${id}.reply${guess.reason}`, facts)}
          </p>
        )}
        <p className={styles.prose}>{prose(lesson.why?.(after) ?? (`${id}.why` as WordKey), facts)}</p>
      </section>
      <section className={styles.section}>
        <h3 className={styles.heading}>{say("lesson.summary")}</h3>
        <p className={styles.summary}>{prose(`${id}.summary`, facts)}</p>
      </section>
    </>
  );
}
