/**
 * Writes to stdout and stderr. All shown text goes through this file. Characters that could move the cursor or turn the writing
 * direction of a terminal are made visible, except for line breaks and our own colours.
 */
import { fstatSync, writeSync } from "node:fs";
import { visibleText } from "@secondline/rig";
import { sayFiles } from "@secondline/words/terminal/files";
import { CommandFailure, EXIT } from "./failure.ts";
import { writeTrouble } from "./fileTrouble.ts";

const STDOUT = 1;
const STDERR = 2;

export const coloured = process.stdout.isTTY === true && process.env.NO_COLOR === undefined;

/** The codes that picocolors puts around bold, dim, red, yellow and blue. */
const COLOUR_CODES = new RegExp(`(${String.fromCharCode(27)}\\[(?:1|2|22|31|33|34|39)m)`);

/** The text in the form that may be shown. `colours`: keeps our own colours. */
export function shown(text: string, colours = coloured): string {
  // Split by a group, every second piece is a colour.
  const line = (one: string) =>
    colours
      ? one
          .split(COLOUR_CODES)
          .map((piece, i) => (i % 2 === 1 ? piece : visibleText(piece)))
          .join("")
      : visibleText(one);
  return text.split("\n").map(line).join("\n");
}

const notWritten = (error: unknown) => sayFiles("unwritten.output", { why: writeTrouble(error) });

/** Writes data to stdout; throws a `CommandFailure` when it cannot be written. */
export function writeData(text: string): void {
  try {
    write(process.stdout, STDOUT, shown(text));
  } catch (error) {
    throw new CommandFailure(EXIT.input, [notWritten(error)]);
  }
}

/** Writes a message to stderr. If it cannot be written, there is nobody to tell; the exit status still shows the failure. */
export function writeMessage(text: string): void {
  try {
    write(process.stderr, STDERR, shown(text));
  } catch {
    // There is nobody to tell.
  }
}

/** On a nearly full disk a file takes only a part of a text, and a stream does not notice that. */
function write(stream: NodeJS.WriteStream, fd: number, text: string): void {
  if (stream.isTTY || !isFile(fd)) {
    stream.write(text);
    return;
  }
  const bytes = Buffer.from(text);
  for (let done = 0; done < bytes.length; ) done += writeSync(fd, bytes, done);
}

function isFile(fd: number): boolean {
  const stat = fstatSync(fd);
  return stat.isFile() || stat.isCharacterDevice();
}

/** The reader of a pipe may close it early: that is no fault. Any other error is told. */
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") return;
  writeMessage(`${notWritten(error)}\n`);
  process.once("exit", () => {
    process.exitCode = EXIT.input;
  });
});
process.stderr.on("error", () => undefined);
// Turns the signal of a limit on file sizes into an error, so that the program does not end in the middle of a file.
if (process.platform !== "win32") process.on("SIGXFSZ", () => undefined);
