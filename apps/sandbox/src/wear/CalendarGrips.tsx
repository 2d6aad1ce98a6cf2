import type { Scale } from "@secondline/figures";
import { sayWear } from "@secondline/words/page/wear";
import { entriesOf, isoOf, moveDate, replaceEntry } from "@secondline/workbench";
import { dateWords, type PlacedDate } from "@secondline/workbench/record";
import { useState } from "react";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { HEAD_HEIGHT } from "./CalendarPaper.tsx";
import { EventMark } from "./EventMark.tsx";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";

/** The day that is shown: a line through the calendar with the date on a handle. */
export function OnLine({ at, bottom, width, text }: { at: number; bottom: number; width: number; text: string }) {
  const half = (text.length * 6.6 + 20) / 2;
  const middle = Math.min(Math.max(at, half), width - half);
  return (
    <>
      <rect x={at - 12} y={HEAD_HEIGHT} width={24} height={bottom - HEAD_HEIGHT} fill="transparent" />
      <path d={`M${at} 26V${bottom}`} stroke="var(--accent)" strokeWidth="2" />
      <rect x={middle - half} y={2} width={2 * half} height={24} rx="12" fill="var(--accent)" />
      <rect className={styles.focus} x={middle - half - 3} y={-1} width={2 * half + 6} height={30} rx="15" />
      <text x={middle} y={18} textAnchor="middle" style={{ fill: "var(--on-accent)" }} fontWeight="500">
        {text}
      </text>
    </>
  );
}

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
      text={dateWords(isoOf(day))}
      value={day}
      min={Math.ceil(x.from)}
      max={Math.floor(x.to)}
      step={1}
      bigStep={30}
      perUnit={(x.px(x.to) - x.px(x.from)) / (x.to - x.from)}
      onBegin={() => look({ entry: one.entry })}
      onBy={setBy}
      onEnd={settle}
      data={`date ${one.entry}`}
      className={away && !chosen ? styles.away! : ""}
    >
      <circle cx={at} cy={y} r="14" fill="transparent" />
      <EventMark event={one.event} x={at} y={y} strong={chosen} />
      <circle className={styles.focus} cx={at} cy={y} r="14" />
      {(labels || by !== 0) && (
        <text
          className={`${styles.halo} ${past ? "" : styles.soft}`}
          x={one.left ? at - 15 : at + 15}
          y={y + 4}
          textAnchor={one.left ? "end" : "start"}
        >
          {by === 0 ? one.label : dateWords(isoOf(day))}
        </text>
      )}
    </Grip>
  );
}
