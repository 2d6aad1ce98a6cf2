import type { Recording } from "@secondline/engine";
import { samplesWithin, type TimeRange } from "./plotGrid.ts";
import { type TraceSet, traceSet } from "./traceSet.ts";
import { tracesOf } from "./traces.ts";

/** Number of rows made at a time, so that a long run can be written without holding up the page [-]. */
const ROWS_PER_CHUNK = 2000;

/**
 * The force traces within `range` as comma-separated text, one line per sample: time [s], then every force raw and
 * CFC 60 [N] (connections as a load cell reads them), then the height of the tie-in [m]. Yields the text piece by piece.
 */
export function* csvChunks(
  recording: Recording,
  range: TimeRange,
  traces: TraceSet = traceSet(recording),
): Generator<string> {
  const columns = tracesOf(recording).flatMap(({ id, name, readAlready }) =>
    (readAlready ? (["raw"] as const) : (["raw", "filtered"] as const)).map((reading) => ({
      head: `${name}${readAlready ? "" : reading === "raw" ? " raw" : " CFC 60"} [N]`,
      samples: traces.require(id, reading).samples,
    })),
  );
  yield `${["time [s]", ...columns.map((column) => column.head), "tie-in height [m]"].join(",")}\n`;
  const { rate, walkerHeight } = recording;
  const timeDigits = Math.ceil(Math.log10(rate));
  const { first, end } = samplesWithin(rate, recording.signals.leash.length, range);
  for (let start = first; start < end; start += ROWS_PER_CHUNK) {
    let text = "";
    for (let i = start; i < Math.min(start + ROWS_PER_CHUNK, end); i++) {
      text += (i / rate).toFixed(timeDigits);
      for (const { samples } of columns) text += `,${samples[i]!.toFixed(1)}`;
      text += `,${walkerHeight[i]?.toFixed(4) ?? ""}\n`;
    }
    yield text;
  }
}

/** The same in one piece. */
export function csvText(recording: Recording, range: TimeRange): string {
  return [...csvChunks(recording, range)].join("");
}
