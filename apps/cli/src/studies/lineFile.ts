/**
 * Files of lines that only ever grow. A line is written at once and the disk has it before it counts, so that a program which is
 * killed leaves whole lines, and at most one torn one at the end.
 */
import { closeSync, fstatSync, fsyncSync, ftruncateSync, openSync, readSync, writeSync } from "node:fs";
import { sayFiles } from "@secondline/words/terminal/files";

export interface LineAt {
  readonly offset: number;
  /** Without its line end [bytes]. */
  readonly length: number;
}

const PIECE_BYTES = 1 << 20;
const NEWLINE = 10;

/** Hands every whole line on; returns the end of the last one, and whether a torn line follows. */
export function scanLines(
  path: string,
  line: (text: string, at: LineAt, number: number) => void,
): { readonly end: number; readonly torn: boolean } {
  const file = openSync(path, "r");
  try {
    const { size } = fstatSync(file);
    const piece = Buffer.alloc(PIECE_BYTES);
    let rest = Buffer.alloc(0);
    let [end, number, place] = [0, 0, 0];
    while (place < size) {
      const read = readSync(file, piece, 0, Math.min(PIECE_BYTES, size - place), place);
      if (read === 0) break;
      place += read;
      const bytes = Buffer.concat([rest, piece.subarray(0, read)]);
      let from = 0;
      for (let to = bytes.indexOf(NEWLINE); to >= 0; to = bytes.indexOf(NEWLINE, from)) {
        line(bytes.subarray(from, to).toString(), { offset: end, length: to - from }, ++number);
        end += to - from + 1;
        from = to + 1;
      }
      rest = Buffer.from(bytes.subarray(from));
    }
    return { end, torn: rest.length > 0 };
  } finally {
    closeSync(file);
  }
}

/** Cuts off the torn end after the last whole line. */
export function cutFileAt(path: string, end: number): void {
  const file = openSync(path, "r+");
  try {
    ftruncateSync(file, end);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

export class LineWriter {
  readonly #file: number;
  #size: number;

  constructor(path: string) {
    this.#file = openSync(path, "a");
    this.#size = fstatSync(this.#file).size;
  }

  /** Throws the system's error; then the file is as it was before. */
  write(line: string): void {
    const bytes = Buffer.from(`${line}\n`);
    try {
      const written = writeSync(this.#file, bytes);
      if (written < bytes.length) throw Object.assign(new Error("not all was written"), { code: "ENOSPC" });
      fsyncSync(this.#file);
    } catch (error) {
      ftruncateSync(this.#file, this.#size);
      throw error;
    }
    this.#size += bytes.length;
  }

  close(): void {
    closeSync(this.#file);
  }
}

/** Reads one line of an open file. */
export function readLineAt(file: number, { offset, length }: LineAt): Buffer {
  const bytes = Buffer.alloc(length);
  for (let done = 0; done < length; ) {
    const read = readSync(file, bytes, done, length - done, offset + done);
    if (read === 0) throw new Error(sayFiles("unread.shrunk"));
    done += read;
  }
  return bytes;
}
