import {
  aloud,
  fixedText,
  halfWithin,
  type KeptTries,
  type LessonId,
  prose,
  say,
  spokenReason,
  spokenTry,
  type Tried,
  triedIn,
  type WordKey,
} from "@secondline/workbench/lessons";
import { Button } from "../design/Button.tsx";
import { download } from "../device/download.ts";
import styles from "./ClosingPage.module.css";
import { ResultBars } from "./ResultBars.tsx";

/** The learner's own numbers against those of the runs, lesson by lesson; printed, it is the handout. */
export function ClosingPage({ kept, onOpen }: { kept: KeptTries; onOpen: (id: LessonId | undefined) => void }) {
  const tried = triedIn(kept);
  const count = tried.filter(({ last }) => last).length;
  const half = halfWithin(tried);
  return (
    <main className={styles.page}>
      <div className={styles.inner}>
        <Button tone="quiet" icon="left" label={say("lesson.back")} onClick={() => onOpen(undefined)} />
        <h2 className={styles.title}>{say("closing.title")}</h2>
        <p className={styles.intro}>
          {count === 0 ? say("closing.none") : say("closing.tried", { tried: count, all: tried.length })}{" "}
          {half !== undefined && say("closing.mean", { percent: `${Math.ceil(100 * half)} %` })}
        </p>
        <div className={styles.buttons}>
          <Button label={say("closing.print")} onClick={() => print()} />
          <Button
            icon="save"
            label={say("class.aloud")}
            onClick={() => download(aloud(kept), "lessons.txt", "text/plain")}
          />
        </div>
        <ol className={styles.list}>
          {tried.map((one) => (
            <Line key={one.lesson.id} tried={one} onOpen={onOpen} />
          ))}
        </ol>
        <p className={styles.soft}>{say("list.invented")}</p>
      </div>
    </main>
  );
}

function Line({ tried, onOpen }: { tried: Tried; onOpen: (id: LessonId) => void }) {
  const { lesson, number, last } = tried;
  const { id, scale } = lesson;
  const reason = spokenReason(tried);
  const summary = fixedText(`${id}.summary` as WordKey);
  return (
    <li className={styles.lesson}>
      <h3 className={styles.lessonTitle}>
        {number}. {say(`${id}.title`)}
      </h3>
      <p className={styles.ask}>{prose(`${id}.ask`)}</p>
      <p>{spokenTry(tried)}</p>
      {reason !== undefined && <p>{reason}</p>}
      {last && <ResultBars scale={scale} predicted={last.predicted} result={last.result} given={undefined} />}
      {last && summary !== undefined && <p className={styles.summary}>{summary}</p>}
      <div className={styles.buttons}>
        <Button label={say("closing.again")} onClick={() => onOpen(id)} />
      </div>
    </li>
  );
}
