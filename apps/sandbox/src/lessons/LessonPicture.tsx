import type { PlaybackClock } from "@secondline/workbench";
import {
  isSameFall,
  type LessonJob,
  type LessonPictureChoice,
  type LessonRun,
  say,
} from "@secondline/workbench/lessons";
import type { Theme } from "../design/palette.ts";
import { useReducedMotion } from "../design/useMedia.ts";
import { SceneView } from "../scene/SceneView.tsx";
import { PlayStrip } from "../time/PlayStrip.tsx";
import { AlongRibbon } from "./AlongRibbon.tsx";
import { ClassTraces, tracedTime } from "./ClassTraces.tsx";
import styles from "./LessonPage.module.css";
import { ScenePointer } from "./ScenePointer.tsx";

interface Props {
  clock: PlaybackClock;
  theme: Theme;
  wide: boolean;
  /** The falls that are there to be shown, and the one that is. */
  pictures: readonly LessonPictureChoice[];
  picture: LessonPictureChoice | undefined;
  failed: LessonJob;
  show: (which: LessonPictureChoice["which"]) => void;
  inClass: boolean;
  /** The run whose strength and load along the main line stand under the picture. */
  along: LessonRun | undefined;
}

/** The fall that the text speaks of, with its playback; after the second run, either fall. */
export function LessonPicture({ clock, theme, wide, pictures, picture, failed, show, inClass, along }: Props) {
  const reducedMotion = useReducedMotion();
  if (!picture) {
    const none = failed.kind === "failed" || failed.kind === "stopped";
    return <p className={styles.waiting}>{say(none ? "lesson.pictureFailed" : "lesson.pictureWaiting")}</p>;
  }
  // A ghost of the fall before makes sense where both differ and are on the same line, and where there is room for it and its key.
  const run = picture.fall;
  const before = pictures.find(({ which }) => which === "before")?.fall;
  const isGhost =
    before !== undefined && before.assessed.rig.span === run.assessed.rig.span && !isSameFall(before, run);
  const other = wide && picture.which === "after" && isGhost ? before.recording : undefined;
  return (
    <>
      <div className={styles.scene}>
        <SceneView
          recording={run.recording}
          previous={other}
          rig={run.assessed.rig}
          gaveWay={run.outcome.gaveWay}
          clock={clock}
          theme={theme}
          camera="event"
          showForces={false}
          reducedMotion={reducedMotion}
        />
        {inClass && wide && <ScenePointer clock={clock} tracedTime={tracedTime(pictures)} />}
        {pictures.length > 1 && (
          <fieldset className={styles.which} data-over-scene>
            <legend className="visually-hidden">{say("lesson.pictureChoice")}</legend>
            {pictures.map(({ which, label }) => (
              <button key={which} type="button" aria-pressed={which === picture.which} onClick={() => show(which)}>
                {label}
              </button>
            ))}
          </fieldset>
        )}
      </div>
      {along && <AlongRibbon run={along} clock={clock} />}
      {inClass && wide && <ClassTraces {...{ clock, pictures }} />}
      <div className={styles.play}>
        <PlayStrip clock={clock} />
      </div>
    </>
  );
}
