/** Where a command writes: data to stdout, messages and progress to stderr. Colours and progress only on a terminal. */
import { createColors } from "picocolors";

const colours = createColors(process.stdout.isTTY === true && process.env.NO_COLOR === undefined);

const NARROWEST = 60;
const WIDEST = 100;
/** Columns to fill: the terminal's, within what is comfortable to read; 100 in a pipe. */
export const width = Math.min(WIDEST, Math.max(NARROWEST, process.stdout.columns ?? WIDEST));

export const { bold, dim } = colours;
export const print = (text: string) => process.stdout.write(`${text}\n`);
export const message = (text: string) => process.stderr.write(`${text}\n`);

/** The colour of a verdict; the word beside it says the same. */
export const VERDICT_COLOUR = { holds: colours.blue, thin: colours.yellow, fails: colours.red } as const;
export const VERDICT_MARK = { holds: "●", thin: "▲", fails: "✕" } as const;

const BAR = 24;

/** Shows how far a computation is; silent unless stderr is a terminal. `end` wipes the line. */
export function progressLine() {
  const shown = process.stderr.isTTY === true;
  return {
    show(done: number, doing: string) {
      if (!shown) return;
      const full = Math.round(done * BAR);
      const bar = "█".repeat(full) + "░".repeat(BAR - full);
      const text = `${bar} ${String(Math.round(done * 100)).padStart(3)} %  ${doing}`;
      process.stderr.write(`\r\x1b[K${text.slice(0, (process.stderr.columns ?? 80) - 1)}`);
    },
    end() {
      if (shown) process.stderr.write("\r\x1b[K");
    },
  };
}
