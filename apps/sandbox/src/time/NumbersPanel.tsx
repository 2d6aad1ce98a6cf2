import type { Recording } from "@secondline/engine";
import {
  dataRows,
  forceAt,
  type Pyramid,
  type Reading,
  rangeStatistics,
  readyPyramid,
  secondsDecimals,
  type TraceStyle,
} from "@secondline/figures/time";
import { capital, quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import type { PlaybackClock } from "@secondline/workbench";
import { useDeferredValue, useMemo } from "react";
import { useClock } from "../clock/useClock.ts";
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

interface Column {
  readonly trace: TraceStyle;
  readonly pyramid: Pyramid;
}

/** The forces as numbers: what the visible range holds, and the table behind the plot. */
export function NumbersPanel({ recording, clock, view, shown, reading }: Props) {
  const { traces, ready } = useTraces(recording);
  const range = useDeferredValue(view.range);
  // biome-ignore lint/correctness/useExhaustiveDependencies: traces become ready one by one; their number says so
  const columns = useMemo(
    () => shown.map((trace): Column => ({ trace, pyramid: readyPyramid(traces, trace.id, reading) })),
    [shown, traces, reading, ready],
  );
  const digits = secondsDecimals(range.to - range.from);
  const read = reading === "raw" ? sayTime("numbersPanel.rawSamples") : sayTime("numbersPanel.filtered");
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keys that scroll it
    <section className={styles.numbers} aria-label={sayTime("numbersPanel.forcesNumbers")} tabIndex={0}>
      <RangeFields range={view.range} duration={recording.duration} digits={digits} onRange={view.setRange} />
      <table className={styles.table}>
        <caption>{sayTime("numbersPanel.caption", { read })}</caption>
        <thead>
          <tr>
            <th scope="col">{sayTime("numbersPanel.force")}</th>
            <th scope="col">{sayTime("numbersPanel.cursor")}</th>
            {view.measure !== null && (
              <th scope="col">{sayTime("numbersPanel.since", { seconds: quantity.seconds(view.measure, 3) })}</th>
            )}
            <th scope="col">{sayTime("numbersPanel.largest")}</th>
            <th scope="col">{sayTime("numbersPanel.at")}</th>
            <th scope="col">{sayTime("numbersPanel.least")}</th>
            <th scope="col">{sayTime("numbersPanel.mean")}</th>
          </tr>
        </thead>
        <tbody>
          {columns.map((column) => (
            <StatisticsRow
              key={column.trace.id}
              {...{ column, recording, clock, range, digits }}
              measure={view.measure}
            />
          ))}
        </tbody>
      </table>
      <DataTable {...{ columns, recording, range }} />
    </section>
  );
}

type RowProps = Pick<Props, "recording" | "clock"> & {
  readonly column: Column;
  readonly range: TimeView["range"];
  readonly measure: number | null;
  readonly digits: number;
};

function StatisticsRow({ column: { trace, pyramid }, recording, clock, range, measure, digits }: RowProps) {
  const { rate } = recording;
  const found = useMemo(() => rangeStatistics(pyramid, rate, range), [pyramid, rate, range]);
  const now = useClock(clock, ({ time }) => forceAt(pyramid, rate, time));
  const then = measure === null ? null : forceAt(pyramid, rate, measure);
  return (
    <tr>
      <th scope="row">{capital(trace.name)}</th>
      <td>{cell(now)}</td>
      {measure !== null && <td>{now === null || then === null ? "–" : difference(now - then)}</td>}
      <td>{cell(found?.max)}</td>
      <td>{found ? quantity.seconds(found.maxTime, Math.max(digits, 3)) : "–"}</td>
      <td>{cell(found?.min)}</td>
      <td>{cell(found?.mean)}</td>
    </tr>
  );
}

const cell = (force: number | null | undefined) => (force == null ? "–" : quantity.loadIn(force));
const difference = (force: number) => `${force > 0 ? "+" : ""}${quantity.kilonewtons(force, "nearest")}`;

/** More rows than this nobody reads; a file of the range has every sample. */
const MOST_ROWS = 100;

function DataTable({
  columns,
  recording,
  range,
}: { columns: readonly Column[] } & Pick<RowProps, "recording" | "range">) {
  const { rate } = recording;
  const rows = useMemo(
    () =>
      dataRows(
        columns.map((column) => column.pyramid),
        rate,
        range,
        MOST_ROWS,
      ),
    [columns, rate, range],
  );
  const exact = rows.every((row) => row.from === row.to);
  return (
    <table className={styles.table}>
      <caption>{exact ? sayTime("numbersPanel.everySample") : sayTime("numbersPanel.largestOfEach")}</caption>
      <thead>
        <tr>
          <th scope="col">{exact ? sayTime("numbersPanel.time") : sayTime("numbersPanel.from")}</th>
          {columns.map(({ trace }) => (
            <th key={trace.id} scope="col">
              {capital(trace.name)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.from}>
            <th scope="row">{quantity.seconds(row.from, 4)}</th>
            {row.forces.map((force, i) => (
              <td key={columns[i]!.trace.id}>{cell(force)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
