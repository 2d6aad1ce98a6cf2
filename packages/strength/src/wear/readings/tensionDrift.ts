/** How the tension of a line has drifted from reading to reading. */
import type { Rig } from "@secondline/rig";
import { date, monthsBetween } from "../../dates/calendarDate.ts";
import { type NoteFact, noteFact } from "../../noteFacts.ts";
import type { LineReading } from "./lineReading.ts";
import { type ReadingComparison, readingAgainstRig } from "./readingAgainstRig.ts";

export interface TensionDrift {
  /** In order of date. */
  readonly readings: readonly ReadingComparison[];
  /** From the first reading to the last: change over the first, and the time [-, months]. */
  readonly change: number;
  readonly months: number;
  readonly message: NoteFact;
}

/** Undefined with fewer than two dated readings. */
export function tensionDrift(rig: Rig, readings: readonly LineReading[]): TensionDrift | undefined {
  const dated = readings
    .filter((reading) => reading.on !== undefined)
    .sort((a, b) => a.on!.localeCompare(b.on!))
    .map((reading) => readingAgainstRig(rig, reading));
  const [first, last] = [dated[0], dated.at(-1)];
  if (first === undefined || last === undefined || dated.length < 2) return undefined;
  const change = last.pretension / first.pretension - 1;
  const months = monthsBetween(date(first.reading.on!), date(last.reading.on!));
  const message = noteFact(change < 0 ? "drift.less" : "drift.more", {
    first: { force: first.pretension },
    firstOn: { day: first.reading.on! },
    last: { force: last.pretension },
    lastOn: { day: last.reading.on! },
    change: { share: Math.abs(change) },
  });
  return { readings: dated, change, months, message };
}
