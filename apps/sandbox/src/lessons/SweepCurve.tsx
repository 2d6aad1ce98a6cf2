import { CURVE_SIZE, sweepCurve } from "@secondline/figures/lessons";
import { allFacts, crossingOf, type LessonRun, prose, say } from "@secondline/workbench/lessons";
import { LookedAt } from "../picture/LookedAt.tsx";
import styles from "./DotStrip.module.css";
import { usePictureWidth } from "./usePictureWidth.ts";

/** The drop over the range with its band, and where it meets the limit. */
export function SweepCurve({ before, after }: { before: LessonRun; after: LessonRun }) {
  const { ref, width } = usePictureWidth(CURVE_SIZE.width);
  const { swept } = after;
  const met = crossingOf(swept);
  if (!swept) return null;
  const { from, to } = swept.knobs[0]!;
  const points = swept.points.flatMap(({ values, curve }) => (curve ? [{ at: values[0]!, ...curve }] : []));
  const facts = allFacts(before, after);
  const crossing = met && {
    limit: met.limit.value,
    at: met.at,
    low: met.low ?? met.at,
    high: met.high ?? met.at,
    words: say("howFar.limit", facts),
  };
  const label = met ? say("howFar.curve", facts) : "";
  return (
    <figure className={styles.figure}>
      <div ref={ref}>
        <LookedAt
          of={sweepCurve({ width, from, to, points, crossing })}
          width={width}
          height={CURVE_SIZE.height}
          styles={styles}
          label={label}
        />
      </div>
      {met && <figcaption>{prose("howFar.curve", facts)}</figcaption>}
    </figure>
  );
}
