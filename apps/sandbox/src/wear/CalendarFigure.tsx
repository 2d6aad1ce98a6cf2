import { dayLine, type TakeDownMark, WEAR_TILES } from "@secondline/figures/wear";
import { dayText } from "@secondline/words/dates";
import { sayWear } from "@secondline/words/page/wear";
import { isoOf, placeOf, type Stretch, type WrittenEntry } from "@secondline/workbench";
import { calendarLayout } from "@secondline/workbench/record";
import { useId, useMemo, useRef, useState } from "react";
import { Shapes, Tiles } from "../picture/Shapes.tsx";
import { useFrameSize } from "../time/useFrameSize.ts";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { DatedGrip } from "./DatedGrip.tsx";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";

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
  const record = useWear((state) => state.work.record);
  const owner = useWear((state) => state.owner);
  const on = useWear((state) => state.on);
  const chosen = useWear((state) => state.entry);
  const along = useWear((state) => state.along);
  const { look } = useWearActions();
  const [held, setHeld] = useState<readonly [number, number]>();
  const layout = useMemo(
    () => calendarLayout({ record, owner, on, mark, held, width, wide }),
    [record, owner, on, mark, held, width, wide],
  );
  const { entries, x, span, today, placed, hasLabels, bottom, paper } = layout;
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
      <Tiles of={WEAR_TILES} id={id} />
      <Shapes of={paper} {...{ styles, id }} />
      <Grip
        label={sayWear("calendarFigure.dayShown")}
        text={dayText(on)}
        value={today}
        min={Math.ceil(span[0])}
        max={Math.floor(span[1])}
        step={1}
        bigStep={30}
        perUnit={x.perUnit}
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
        <Shapes of={dayLine(x.px(today), dayText(on), bottom, width)} styles={styles} />
      </Grip>
      {placed.map((one) => (
        <DatedGrip
          key={one.entry}
          one={one}
          x={x}
          y={one.y}
          labels={hasLabels}
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
