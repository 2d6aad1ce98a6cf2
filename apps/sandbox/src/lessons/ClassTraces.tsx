import type { Recording } from "@secondline/engine";
import { LAYOUT_LOOKS, type TraceLook } from "@secondline/figures/time";
import type { PlaybackClock } from "@secondline/workbench";
import { type LessonRun, say } from "@secondline/workbench/lessons";
import { useMemo } from "react";
import { lettering } from "../design/lettering.ts";
import { LayoutPlot } from "../layouts/LayoutTraces.tsx";
import { useFrameSize } from "../time/useFrameSize.ts";
import styles from "./classroom.module.css";

interface Props {
  clock: PlaybackClock;
  before: LessonRun | undefined;
  after: LessonRun | undefined;
}

/** Room for the names at the right ends, in the type of a class [px]. */
export const CLASS_GUTTER = { wide: 200, compact: 120 };

const NAMES: readonly TraceLook[] = [
  { name: say("lesson.pictureBefore"), look: LAYOUT_LOOKS[0]! },
  { name: say("lesson.pictureAfter"), look: LAYOUT_LOOKS[1]! },
];

/** Both runs where they differ: what happens once more to the same rig has the same trace. */
function traced({ before, after }: Omit<Props, "clock">): readonly Recording[] {
  const same = after?.many !== undefined || after?.swept !== undefined;
  return [before, same ? undefined : after].flatMap((run) => run?.recording ?? []);
}

/** How long the traces are: as the longer run, whichever is in the picture [s]. */
export const tracedTime = (runs: Omit<Props, "clock">): number =>
  Math.max(0, ...traced(runs).map(({ duration }) => duration));

/** The pull on the harness of both runs, under the picture and on its clock. */
export function ClassTraces({ clock, before, after }: Props) {
  const { ref, size } = useFrameSize<HTMLDivElement>();
  const recordings = useMemo(() => traced({ before, after }), [before, after]);
  return (
    <section className={styles.traces} aria-label={say("class.traces")}>
      <h3 className={styles.force}>{say("class.traces")}</h3>
      <div ref={ref} className={styles.figure}>
        {size.width > 0 && before && (
          <LayoutPlot
            clock={clock}
            recordings={recordings}
            trace="leash"
            name={say("class.traces")}
            width={size.width}
            height={size.height}
            compact={false}
            looks={NAMES}
            gutter={CLASS_GUTTER}
            lettering={lettering()}
          />
        )}
      </div>
    </section>
  );
}
