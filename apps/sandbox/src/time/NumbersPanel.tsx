import type { Recording } from "@secondline/engine";
import {
  type ForceColumn,
  type Reading,
  rangeTable,
  readyPyramid,
  sampleTable,
  secondsDecimals,
  type TraceStyle,
} from "@secondline/figures/time";
import { sayTime } from "@secondline/words/page/time";
import type { PlaybackClock } from "@secondline/workbench";
import { memo, useDeferredValue, useMemo } from "react";
import { useClock } from "../clock/useClock.ts";
import { Table } from "../design/Table.tsx";
import styles from "./NumbersPanel.module.css";
import { RangeFields } from "./RangeFields.tsx";
import type { TimeView } from "./useTimeView.ts";
import { useTraces } from "./useTraces.ts";

interface Props {
  readonly recording: Recording;
  readonly clock: PlaybackClock;
  readonly view: TimeView;
  readonly shown: readonly TraceStyle[];
  readonly reading: Reading;
}

/** The forces as numbers: what the visible range holds, and the table behind the plot. */
export function NumbersPanel({ recording, clock, view, shown, reading }: Props) {
  const { traces, ready } = useTraces(recording);
  const range = useDeferredValue(view.range);
  // biome-ignore lint/correctness/useExhaustiveDependencies: traces become ready one by one; their number says so
  const columns = useMemo(
    () => shown.map(({ id, name }): ForceColumn => ({ name, pyramid: readyPyramid(traces, id, reading) })),
    [shown, traces, reading, ready],
  );
  const { rate } = recording;
  const { measure } = view;
  const digits = secondsDecimals(range.to - range.from);
  const read = reading === "raw" ? sayTime("numbersPanel.rawSamples") : sayTime("numbersPanel.filtered");
  const inRange = useMemo(
    () => rangeTable(columns, { rate, range, measure, digits, read }),
    [columns, rate, range, measure, digits, read],
  );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keys that scroll it
    <section className={styles.numbers} aria-label={sayTime("numbersPanel.forcesNumbers")} tabIndex={0}>
      <RangeFields range={view.range} duration={recording.duration} digits={digits} onRange={view.setRange} />
      <AtCursor {...{ clock, inRange }} />
      <Samples {...{ columns, rate, range }} />
    </section>
  );
}

function AtCursor({ clock, inRange }: Pick<Props, "clock"> & { inRange: ReturnType<typeof rangeTable> }) {
  const { caption, ...table } = inRange(useClock(clock, ({ time }) => time));
  return <Table {...table} isNamed className={styles.table} caption={<caption>{caption}</caption>} />;
}

const Samples = memo(function Samples({ columns, rate, range }: SamplesProps) {
  const { caption, ...table } = useMemo(() => sampleTable(columns, rate, range), [columns, rate, range]);
  return <Table {...table} isNamed className={styles.table} caption={<caption>{caption}</caption>} />;
});

interface SamplesProps {
  readonly columns: readonly ForceColumn[];
  readonly rate: number;
  readonly range: TimeView["range"];
}
