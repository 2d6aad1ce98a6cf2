import type { Scale } from "@secondline/figures";
import { entryMark } from "@secondline/figures/wear";
import { dayText } from "@secondline/words/dates";
import { sayWear } from "@secondline/words/page/wear";
import { entriesOf, isoOf, moveDate, replaceEntry } from "@secondline/workbench";
import type { PlacedDate } from "@secondline/workbench/record";
import { useState } from "react";
import { Shapes } from "../picture/Shapes.tsx";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";

/** An entry that can be moved to another day. It follows the hand and takes its place in the record when let go. */
export function DatedGrip({
  one,
  x,
  y,
  labels,
  chosen,
  past,
  away,
}: {
  one: PlacedDate;
  x: Scale;
  y: number;
  labels: boolean;
  chosen: boolean;
  past: boolean;
  /** It lies on webbing that is out of sight. */
  away: boolean;
}) {
  const written = useWear((state) => state.work.record);
  const owner = useWear((state) => state.owner);
  const { edit, finish, look } = useWearActions();
  const [by, setBy] = useState(0);
  const day = one.day + by;
  const at = x.px(day);
  function settle(days: number): void {
    setBy(0);
    const before = entriesOf(written, owner)[one.entry];
    const whole = Math.round(days);
    if (!before || whole === 0) return;
    finish();
    const after = replaceEntry(written, owner, one.entry, moveDate(before, whole));
    edit(after.record, sayWear("calendarGrips.step"));
    look({ entry: after.entry });
    // The entry may stand elsewhere in the order now; the keyboard stays with it.
    requestAnimationFrame(() => document.querySelector<SVGElement>(`[data-grip="date ${after.entry}"]`)?.focus());
  }
  return (
    <Grip
      label={sayWear("calendarGrips.date", { what: one.words })}
      text={dayText(isoOf(day))}
      value={day}
      min={Math.ceil(x.from)}
      max={Math.floor(x.to)}
      step={1}
      bigStep={30}
      perUnit={x.perUnit}
      onBegin={() => look({ entry: one.entry })}
      onBy={setBy}
      onEnd={settle}
      data={`date ${one.entry}`}
      className={away && !chosen ? styles.away! : ""}
    >
      <Shapes of={entryMark(one.event, at, y, chosen)} styles={styles} />
      {(labels || by !== 0) && (
        <text
          className={`${styles.halo} ${past ? "" : styles.soft}`}
          x={one.left ? at - 15 : at + 15}
          y={y + 4}
          textAnchor={one.left ? "end" : "start"}
        >
          {by === 0 ? one.label : dayText(isoOf(day))}
        </text>
      )}
    </Grip>
  );
}
