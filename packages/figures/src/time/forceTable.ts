/** The forces as numbers: a summary of a range, and the samples behind the plot, cell by cell. */
import { capital, quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import type { TimeRange } from "./plotGrid.ts";
import type { Pyramid } from "./pyramid.ts";
import { dataRows, rangeStatistics } from "./statistics.ts";
import { forceAt } from "./traceSet.ts";

export interface ForceColumn {
  readonly name: string;
  readonly pyramid: Pyramid;
}

export interface ForceTable {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const cell = (force: number | null | undefined) => (force == null ? "–" : quantity.loadIn(force));
const difference = (force: number) => `${force > 0 ? "+" : ""}${quantity.kilonewtons(force, "nearest")}`;

/** Summary of each trace in the range; `read`: which samples, in words. `measure`: the second cursor [s]; null: none. */
export function rangeTable(
  columns: readonly ForceColumn[],
  {
    rate,
    range,
    measure,
    digits,
    read,
  }: {
    readonly rate: number;
    readonly range: TimeRange;
    readonly measure: number | null;
    readonly digits: number;
    readonly read: string;
  },
): (time: number) => ForceTable {
  const found = columns.map(({ pyramid }) => rangeStatistics(pyramid, rate, range));
  const since = measure === null ? [] : [sayTime("numbersPanel.since", { seconds: quantity.seconds(measure, 3) })];
  const heads = [
    sayTime("numbersPanel.force"),
    sayTime("numbersPanel.cursor"),
    ...since,
    sayTime("numbersPanel.largest"),
    sayTime("numbersPanel.at"),
    sayTime("numbersPanel.least"),
    sayTime("numbersPanel.mean"),
  ];
  const caption = sayTime("numbersPanel.caption", { read });
  return (time) => ({
    caption,
    heads,
    rows: columns.map(({ name, pyramid }, i) => {
      const [now, then, of] = [
        forceAt(pyramid, rate, time),
        measure === null ? null : forceAt(pyramid, rate, measure),
        found[i],
      ];
      return [
        capital(name),
        cell(now),
        ...(measure === null ? [] : [now === null || then === null ? "–" : difference(now - then)]),
        cell(of?.max),
        of ? quantity.seconds(of.maxTime, Math.max(digits, 3)) : "–",
        cell(of?.min),
        cell(of?.mean),
      ];
    }),
  });
}

/** Most rows of the table: nobody reads more, and a file of the range has every sample [-]. */
const MOST_ROWS = 100;

/** The samples of the range, or the largest of each interval where there are too many. */
export function sampleTable(columns: readonly ForceColumn[], rate: number, range: TimeRange): ForceTable {
  const rows = dataRows(
    columns.map(({ pyramid }) => pyramid),
    rate,
    range,
    MOST_ROWS,
  );
  const exact = rows.every((row) => row.from === row.to);
  return {
    caption: exact ? sayTime("numbersPanel.everySample") : sayTime("numbersPanel.largestOfEach"),
    heads: [
      exact ? sayTime("numbersPanel.time") : sayTime("numbersPanel.from"),
      ...columns.map(({ name }) => capital(name)),
    ],
    rows: rows.map(({ from, forces }) => [quantity.seconds(from, 4), ...forces.map(cell)]),
  };
}
