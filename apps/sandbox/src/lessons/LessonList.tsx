import { type KeptTries, LESSONS, type LessonPlace, lastTryWords, say } from "@secondline/workbench/lessons";
import { Button } from "../design/Button.tsx";
import styles from "./LessonsView.module.css";

interface Props {
  kept: KeptTries;
  onOpen: (place: LessonPlace) => void;
  /** Shows them to a class; absent while it is shown to one. */
  onClass: (() => void) | undefined;
}

/** All lessons, with what was predicted in each so far. */
export function LessonList({ kept, onOpen, onClass }: Props) {
  return (
    <main className={styles.list}>
      <div className={styles.listInner}>
        <h2 className={styles.title}>{say("view.title")}</h2>
        <p className={styles.intro}>{say("view.intro")}</p>
        <div className={styles.actions}>
          {onClass && <Button label={say("class.begin")} title={say("class.hint")} onClick={onClass} />}
          <Button label={say("closing.title")} onClick={() => onOpen("closing")} />
        </div>
        <ol className={styles.lessons}>
          {LESSONS.map(({ id, scale }, i) => {
            const words = lastTryWords(kept, id, scale);
            return (
              <li key={id}>
                <button type="button" className={styles.entry} onClick={() => onOpen(id)}>
                  <span className={styles.number} aria-hidden="true">
                    {i + 1}
                  </span>
                  <span className={styles.entryTitle}>{say(`${id}.title`)}</span>
                  <span className={styles.entryLine}>{say(`${id}.line`)}</span>
                  <span className={styles.entryKept}>{words}</span>
                </button>
              </li>
            );
          })}
        </ol>
        <p className={styles.invented}>{say("list.invented")}</p>
      </div>
    </main>
  );
}
