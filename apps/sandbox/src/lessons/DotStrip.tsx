import { dotStrip, STRIP_WIDTH } from "@secondline/figures/lessons";
import { listed } from "@secondline/words";
import { allFacts, type LessonRun, prose, say } from "@secondline/workbench/lessons";
import { LookedAt } from "../picture/LookedAt.tsx";
import { quantity } from "../words.ts";
import styles from "./DotStrip.module.css";
import { usePictureWidth } from "./usePictureWidth.ts";

const FALL_COUNT = 30;

/** One dot for each fall, along the load that it brought. */
export function DotStrip({ before, after }: { before: LessonRun; after: LessonRun }) {
  const { ref, width } = usePictureWidth(STRIP_WIDTH);
  const many = [...(after.many ?? [])].sort((a, b) => a - b);
  if (many.length === 0) return null;
  const facts = allFacts(before, after);
  const { height, shapes } = dotStrip(many, width);
  return (
    <figure className={styles.figure}>
      <div ref={ref}>
        <LookedAt of={shapes} width={width} height={height} styles={styles} label={say("chance.dots", facts)} />
      </div>
      <figcaption>{prose("chance.dots", facts)}</figcaption>
      {many.length < FALL_COUNT && <p>{say("chance.few", { count: many.length })}</p>}
      <p className="visually-hidden">
        {say("chance.list", { list: listed(many.map((force) => quantity.load(force))) })}
      </p>
    </figure>
  );
}
