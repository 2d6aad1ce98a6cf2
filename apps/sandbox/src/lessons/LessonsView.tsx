import { useCallback, useEffect, useState } from "react";
import type { Booted } from "../boot.ts";
import type { Theme } from "../design/palette.ts";
import { deviceShelf } from "../state/shelf.ts";
import { useActions } from "../state/useSandbox.ts";
import { CautionFoot } from "../verdict/CautionFoot.tsx";
import { words } from "../words.ts";
import { type Kept, keep, readKept, type Try } from "./kept.ts";
import { LessonList } from "./LessonList.tsx";
import { LessonPage } from "./LessonPage.tsx";
import styles from "./LessonsView.module.css";
import { LESSONS, type LessonId } from "./lessons.ts";
import { say } from "./words.ts";

interface Props {
  booted: Booted;
  theme: Theme;
  wide: boolean;
}

/** Six guided lessons made of the same simulation: the list of them, or one in full. */
export function LessonsView({ booted, theme, wide }: Props) {
  const [open, setOpen] = useState<LessonId>();
  const { kept, onTry } = useKept();
  const lesson = LESSONS.find(({ id }) => id === open);
  const cautions = [...words.generalCautions(), say("list.invented")];
  return (
    <div className={styles.view}>
      {lesson ? (
        <LessonPage
          key={lesson.id}
          {...{ lesson, theme, wide }}
          read={booted.read}
          tries={kept[lesson.id] ?? []}
          onTry={(one) => onTry(lesson.id, one)}
          onOpen={setOpen}
        />
      ) : (
        <LessonList kept={kept} onOpen={setOpen} />
      )}
      <CautionFoot cautions={cautions} />
    </div>
  );
}

/** Predictions and results of this device; a storage that fails is told of and the page goes on. */
function useKept() {
  const { tell } = useActions();
  const [kept, setKept] = useState<Kept>({});
  useEffect(() => setKept(readKept(deviceShelf())), []);
  const onTry = useCallback(
    (id: LessonId, one: Try) => {
      setKept((now) => {
        try {
          return keep(deviceShelf(), now, id, one);
        } catch (error) {
          const message = error instanceof Error ? error.message : String(error);
          queueMicrotask(() => tell({ tone: "fault", text: say("lesson.notKept", { message }) }));
          return { ...now, [id]: [...(now[id] ?? []), one] };
        }
      });
    },
    [tell],
  );
  return { kept, onTry };
}
