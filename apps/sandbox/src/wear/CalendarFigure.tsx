import { scaleOf } from "@secondline/figures";
import { sayWear } from "@secondline/words/page/wear";
import { dayOf, entriesOf, isoOf, placeOf, type Stretch, type WrittenEntry } from "@secondline/workbench";
import { calendarSpan, datedOf, dateWords, PART_KINDS, placeDates, WEBBING_KINDS } from "@secondline/workbench/record";
import { useId, useMemo, useRef, useState } from "react";
import { useFrameSize } from "../time/useFrameSize.ts";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { DatedGrip, OnLine } from "./CalendarGrips.tsx";
import { HEAD_HEIGHT, STAY_HEIGHT, Stays, TakeDownBand, type TakeDownMark, Ticks } from "./CalendarPaper.tsx";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";
import { Patterns } from "./Patterns.tsx";

/** When it hung and what was written down, the day that is shown, and the take-down date. */
export function CalendarFigure({ wide, mark }: { wide: boolean; mark: TakeDownMark | undefined }) {
  const { ref, size } = useFrameSize<HTMLElement>();
  return (
    <figure className={styles.figure} ref={ref}>
      {size.width > 0 && <Drawing {...{ wide, mark }} width={size.width} />}
    </figure>
  );
}

function Drawing({ wide, mark, width }: { wide: boolean; mark: TakeDownMark | undefined; width: number }) {
  const id = useId().replaceAll(":", "");
  const written = useWear((state) => state.work.record);
  const owner = useWear((state) => state.owner);
  const on = useWear((state) => state.on);
  const chosen = useWear((state) => state.entry);
  const along = useWear((state) => state.along);
  const { look } = useWearActions();
  const entries = entriesOf(written, owner);
  const kinds = owner.list === "webbings" ? WEBBING_KINDS : PART_KINDS;
  const dated = useMemo(() => datedOf(entries, kinds), [entries, kinds]);
  const today = dayOf(on) ?? 0;
  const [held, setHeld] = useState<[number, number]>();
  const ahead = mark ? [mark.day] : [];
  const span =
    held ??
    calendarSpan(
      dated.map(({ day }) => day),
      today,
      ahead,
    );
  const x = scaleOf(span[0], span[1], wide ? 112 : 12, width - 14);
  const rowHeight = wide ? 28 : 34;
  const labels = wide && dated.length <= 18;
  const placed = placeDates(dated, x, labels, width);
  const rows = Math.max(0, ...placed.map(({ row }) => row)) + 1;
  const top = HEAD_HEIGHT + STAY_HEIGHT + 12;
  const bottom = top + rows * rowHeight + 6;
  const shown = useRef(today);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing whose parts can be moved; no element of HTML is one
    <svg
      className={styles.svg}
      width={width}
      height={bottom + 30}
      viewBox={`0 0 ${width} ${bottom + 30}`}
      role="group"
      aria-label={sayWear("calendarFigure.calendarEntries")}
    >
      <Patterns id={id} />
      <Ticks {...{ x, bottom, wide, width }} />
      {mark && <TakeDownBand {...{ x, mark, id, bottom, width }} today={x.px(today)} />}
      <Stays entries={entries} {...{ x, wide, today, id }} />
      {wide && (
        <text className={styles.lane} x={0} y={top + 18}>
          {sayWear("calendarFigure.entries")}
        </text>
      )}
      <Grip
        label={sayWear("calendarFigure.dayShown")}
        text={dateWords(on)}
        value={today}
        min={Math.ceil(span[0])}
        max={Math.floor(span[1])}
        step={1}
        bigStep={30}
        perUnit={(x.px(span[1]) - x.px(span[0])) / (span[1] - span[0])}
        onBegin={() => {
          shown.current = today;
          setHeld(span);
        }}
        onBy={(by) =>
          look({
            on: isoOf(Math.min(Math.max(shown.current + Math.round(by), Math.ceil(span[0])), Math.floor(span[1]))),
          })
        }
        onEnd={() => setHeld(undefined)}
        data="on"
      >
        <OnLine at={x.px(today)} bottom={bottom} width={width} text={dateWords(on)} />
      </Grip>
      {placed.map((one) => (
        <DatedGrip
          key={one.entry}
          one={one}
          {...{ x, labels }}
          y={top + one.row * rowHeight + rowHeight / 2}
          chosen={chosen === one.entry}
          past={one.day <= today}
          away={along !== undefined && isAway(entries[one.entry], along)}
        />
      ))}
    </svg>
  );
}

/** It has a place, and that is out of sight. */
function isAway(entry: WrittenEntry | undefined, sight: Stretch): boolean {
  const place = entry && placeOf(entry);
  return place !== undefined && (place.to < sight.from || place.from > sight.to);
}
