/** Where a command writes: data to stdout, messages and progress to stderr. Colours and progress only on a terminal. */
import { createColors } from "picocolors";
import { coloured, shown, writeData, writeMessage } from "./output.ts";

const colours = createColors(coloured);

/** Text is never set narrower than this [letters]. */
const NARROWEST_COLUMNS = 60;
/** Text is never set wider than this [letters]. */
const WIDEST_COLUMNS = 100;
/** Columns to fill: the terminal's, within a width that is comfortable to read; 100 in a pipe. */
export const width = Math.min(WIDEST_COLUMNS, Math.max(NARROWEST_COLUMNS, process.stdout.columns ?? WIDEST_COLUMNS));

export const { bold, dim } = colours;
export const print = (text: string) => writeData(`${text}\n`);
export const message = (text: string) => writeMessage(`${text}\n`);

/** The colour of a verdict; the word beside it says the same. */
export const VERDICT_COLOUR = {
  holds: colours.blue,
  thin: colours.yellow,
  fails: colours.red,
  open: colours.dim,
  notLoaded: colours.dim,
} as const;
export const VERDICT_MARK = { holds: "●", thin: "▲", fails: "✕", open: "○", notLoaded: "–" } as const;

/** Width of the progress bar [letters]. */
const BAR_COLUMNS = 24;

/** Shows how far a computation is; silent unless stderr is a terminal. `end` wipes the line. */
export function progressLine() {
  const visible = process.stderr.isTTY === true;
  return {
    show(done: number, doing: string) {
      if (!visible) return;
      const full = Math.round(done * BAR_COLUMNS);
      const bar = "█".repeat(full) + "░".repeat(BAR_COLUMNS - full);
      const text = `${bar} ${String(Math.round(done * 100)).padStart(3)} %  ${shown(doing, false)}`;
      process.stderr.write(`\r\x1b[K${text.slice(0, (process.stderr.columns ?? 80) - 1)}`);
    },
    end() {
      if (visible) process.stderr.write("\r\x1b[K");
    },
  };
}
