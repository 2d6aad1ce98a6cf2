/** Why a command ends without doing its job. */
import { visibleText } from "@secondline/rig";

/** The exit statuses. */
export const EXIT = {
  done: 0,
  /** With `--require`: a part is thin or fails. */
  required: 1,
  /** Bad input or a wrong command line. */
  input: 2,
  /** A run failed its own audit, or could not be computed. */
  audit: 3,
  /** Stopped with Ctrl-C; as shells have it, 128 and the number of the signal. */
  stopped: 130,
} as const;

export class CommandFailure extends Error {
  readonly exit: number;
  readonly lines: readonly string[];

  constructor(exit: number, lines: readonly string[]) {
    super(lines.join("\n"));
    this.exit = exit;
    // A line break in a quoted text would begin a new line.
    this.lines = lines.map(visibleText);
  }
}
