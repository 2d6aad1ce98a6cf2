import { keepingTrouble } from "@secondline/workbench";
import {
  type KeptTries,
  keepOrTell,
  LESSONS,
  type LessonId,
  type LessonPlace,
  readKept,
  say,
  type Try,
} from "@secondline/workbench/lessons";
import { useCallback, useEffect, useState } from "react";
import type { Booted } from "../boot.ts";
import { Button } from "../design/Button.tsx";
import type { Theme } from "../design/palette.ts";
import { deviceShelf } from "../device/shelf.ts";
import { useActions } from "../state/useSandbox.ts";
import { CautionFoot } from "../verdict/CautionFoot.tsx";
import { words } from "../words.ts";
import { ClosingPage } from "./ClosingPage.tsx";
import classroom from "./classroom.module.css";
import { LessonList } from "./LessonList.tsx";
import { LessonPage } from "./LessonPage.tsx";
import styles from "./LessonsView.module.css";
import { useClassroom } from "./useClassroom.ts";

interface Props {
  booted: Booted;
  theme: Theme;
  wide: boolean;
}

/** Guided lessons made of the same simulation: the list of lessons, one lesson in full, or the predictions and results. */
export function LessonsView({ booted, theme, wide }: Props) {
  const [open, setOpen] = useState<LessonPlace>();
  const room = useClassroom();
  const { kept, onTry } = useKept();
  const lesson = LESSONS.find(({ id }) => id === open);
  const cautions = [...words.generalCautions(), say("list.invented")];
  return (
    <div className={styles.view}>
      {room.inClass && (
        <div className={classroom.bar}>
          <p>{wide && lesson && say("class.pointHint")}</p>
          <Button tone="quiet" icon="close" label={say("class.end")} onClick={room.end} />
        </div>
      )}
      {open === "closing" ? (
        <ClosingPage kept={kept} onOpen={setOpen} />
      ) : lesson ? (
        <LessonPage
          key={lesson.id}
          {...{ lesson, theme, wide }}
          inClass={room.inClass}
          read={booted.read}
          tries={kept[lesson.id] ?? []}
          onTry={(one) => onTry(lesson.id, one)}
          onOpen={setOpen}
        />
      ) : (
        <LessonList kept={kept} onOpen={setOpen} onClass={room.inClass ? undefined : room.begin} />
      )}
      <CautionFoot cautions={cautions} />
    </div>
  );
}

/** Predictions and results of this device; a storage that fails is told of and the page goes on. */
function useKept() {
  const { tell } = useActions();
  const [kept, setKept] = useState<KeptTries>({});
  useEffect(() => setKept(readKept(deviceShelf())), []);
  const onTry = useCallback(
    (id: LessonId, one: Try) => {
      const onTrouble = (error: unknown) => {
        const message = keepingTrouble(error);
        queueMicrotask(() => tell({ tone: "fault", text: say("lesson.notKept", { message }) }));
      };
      setKept((now) => keepOrTell(deviceShelf(), now, id, one, onTrouble));
    },
    [tell],
  );
  return { kept, onTry };
}
