/**
 * Writes to stdout and stderr. Everything that is shown goes through here, whoever wrote it: what could move the cursor
 * or turn the writing of a terminal is made visible, besides line breaks and the colours of our own.
 */
import { fstatSync, writeSync } from "node:fs";
import { visibleText } from "@secondline/rig";
import { sayFiles } from "@secondline/words/terminal/files";
import { CommandFailure, EXIT } from "./failure.ts";
import { writeTrouble } from "./fileTrouble.ts";

const STDOUT = 1;
const STDERR = 2;

export const coloured = process.stdout.isTTY === true && process.env.NO_COLOR === undefined;

/** What picocolors puts around bold, dim, red, yellow and blue. */
const COLOUR_CODES = new RegExp(`(${String.fromCharCode(27)}\\[(?:1|2|22|31|33|34|39)m)`);

/** The text as it may be shown. `colours`: colours of our own are left in it. */
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

/** Writes a message to stderr. Where that cannot be written there is nobody to tell; the exit status still says it. */
export function writeMessage(text: string): void {
  try {
    write(process.stderr, STDERR, shown(text));
  } catch {
    // See above.
  }
}

/** A file takes a text in pieces when its disk is nearly full, which a stream does not notice. */
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

/** Whoever reads a pipe may close it when they have seen enough: that is no fault. Anything else is told. */
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") return;
  writeMessage(`${notWritten(error)}\n`);
  process.once("exit", () => {
    process.exitCode = EXIT.input;
  });
});
process.stderr.on("error", () => undefined);
// A limit on the size of files is told by an error instead of ending the program in the middle of one.
if (process.platform !== "win32") process.on("SIGXFSZ", () => undefined);
