import type { PlaybackClock } from "@secondline/workbench";
import { type LessonJob, type LessonRun, say } from "@secondline/workbench/lessons";
import type { Theme } from "../design/palette.ts";
import { useReducedMotion } from "../design/useMedia.ts";
import { SceneView } from "../scene/SceneView.tsx";
import { PlayStrip } from "../time/PlayStrip.tsx";
import { AlongRibbon } from "./AlongRibbon.tsx";
import { ClassTraces, tracedTime } from "./ClassTraces.tsx";
import styles from "./LessonPage.module.css";
import { ScenePointer } from "./ScenePointer.tsx";

type Which = "before" | "after";
interface Props {
  clock: PlaybackClock;
  theme: Theme;
  wide: boolean;
  before: LessonRun | undefined;
  after: LessonRun | undefined;
  failed: LessonJob;
  shown: Which;
  show: (which: Which) => void;
  inClass: boolean;
  /** Strength and load along the main line stand under the picture. */
  along: boolean;
}

const CHOICES = [
  { which: "before", label: "lesson.pictureBefore" },
  { which: "after", label: "lesson.pictureAfter" },
] as const;

/** The fall that the text speaks of, with its playback; after the second run, either fall. */
export function LessonPicture({ clock, theme, wide, before, after, failed, shown, show, inClass, along }: Props) {
  const reducedMotion = useReducedMotion();
  const run = shown === "after" ? after : before;
  if (!run) {
    const none = failed.kind === "failed" || failed.kind === "stopped";
    return <p className={styles.waiting}>{say(none ? "lesson.pictureFailed" : "lesson.pictureWaiting")}</p>;
  }
  // A ghost of the fall before makes sense where both are on the same line, and where there is room for it and its key.
  const sameLine = before !== undefined && before.assessed.rig.span === run.assessed.rig.span;
  const other = wide && shown === "after" && sameLine ? before.recording : undefined;
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
        {inClass && wide && <ScenePointer clock={clock} tracedTime={tracedTime({ before, after })} />}
        {after && (
          <fieldset className={styles.which} data-over-scene>
            <legend className="visually-hidden">{say("lesson.pictureChoice")}</legend>
            {CHOICES.map(({ which, label }) => (
              <button key={which} type="button" aria-pressed={which === shown} onClick={() => show(which)}>
                {say(label)}
              </button>
            ))}
          </fieldset>
        )}
      </div>
      {along && <AlongRibbon run={run} clock={clock} />}
      {inClass && wide && <ClassTraces {...{ clock, before, after }} />}
      <div className={styles.play}>
        <PlayStrip clock={clock} />
      </div>
    </>
  );
}
