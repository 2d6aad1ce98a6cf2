import { LAYOUT_LOOKS, type TraceLook } from "@secondline/figures/time";
import type { PlaybackClock } from "@secondline/workbench";
import { isSameFall, type LessonPictureChoice, say } from "@secondline/workbench/lessons";
import { useMemo } from "react";
import { lettering } from "../design/lettering.ts";
import { LayoutPlot } from "../layouts/LayoutTraces.tsx";
import { useFrameSize } from "../time/useFrameSize.ts";
import styles from "./classroom.module.css";

interface Props {
  clock: PlaybackClock;
  pictures: readonly LessonPictureChoice[];
}

/** Room for the names at the right ends, in the type of a class [px]. */
export const CLASS_GUTTER = { wide: 200, compact: 120 };

const looksOf = (pictures: Props["pictures"]): readonly TraceLook[] =>
  pictures.map(({ label }, i) => ({ name: label, look: LAYOUT_LOOKS[i]! }));

/** Falls that move alike have one trace. */
const differing = ([first, second]: Props["pictures"]): Props["pictures"] => {
  if (!first) return [];
  return second && !isSameFall(first.fall, second.fall) ? [first, second] : [first];
};

/** How long the traces are: as the longer run, whichever is in the picture [s]. */
export const tracedTime = (pictures: Props["pictures"]): number =>
  Math.max(0, ...pictures.map(({ fall }) => fall.recording.duration));

/** The pull on the harness of both runs, under the picture and on its clock. */
export function ClassTraces({ clock, pictures }: Props) {
  const { ref, size } = useFrameSize<HTMLDivElement>();
  const drawn = useMemo(() => differing(pictures), [pictures]);
  const recordings = useMemo(() => drawn.map(({ fall }) => fall.recording), [drawn]);
  const looks = useMemo(() => looksOf(drawn), [drawn]);
  return (
    <section className={styles.traces} aria-label={say("class.traces")}>
      <h3 className={styles.force}>{say("class.traces")}</h3>
      <div ref={ref} className={styles.figure}>
        {size.width > 0 && recordings.length > 0 && (
          <LayoutPlot
            clock={clock}
            recordings={recordings}
            trace="leash"
            name={say("class.traces")}
            width={size.width}
            height={size.height}
            compact={false}
            looks={looks}
            gutter={CLASS_GUTTER}
            lettering={lettering()}
          />
        )}
      </div>
    </section>
  );
}
