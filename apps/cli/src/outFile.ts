/**
 * A file that a command writes. It is checked before the command computes, and written beside its place and then moved
 * there, so that a full disk or a killed program leaves the old file as it was.
 */
import { randomBytes } from "node:crypto";
import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  fsyncSync,
  linkSync,
  lstatSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
  writeFileSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { sayFiles } from "@secondline/words/terminal/files";
import { CommandFailure, EXIT } from "./failure.ts";
import { writeTrouble } from "./fileTrouble.ts";

export interface OutFile {
  /** Path as the user wrote it. */
  readonly name: string;
  /** Real path, behind links. */
  readonly path: string;
  readonly overwrite: boolean;
  /** Permission bits of the file that is there already. */
  readonly mode: number | undefined;
}

const refuse = (line: string): CommandFailure => new CommandFailure(EXIT.input, [line]);
const noPlace = (file: string, error: unknown) =>
  refuse(sayFiles("unwritten.place", { file, why: writeTrouble(error) }));

/** Checks the place of a file to write. `inputs`: files that the command reads, which it must not overwrite. */
export function checkOutFile(name: string, overwrite: boolean, inputs: readonly string[]): OutFile {
  if (name === "") throw refuse(sayFiles("unwritten.noName", { file: "--out" }));
  const there = statOf(name);
  if (!there) checkFree(name);
  if (there?.isDirectory()) throw refuse(sayFiles("unwritten.folder", { file: name }));
  if (there && !there.isFile()) throw refuse(sayFiles("unwritten.notOrdinary", { file: name }));
  const same = inputs.find((input) => isSame(there, statOf(input)));
  if (same !== undefined) throw refuse(sayFiles("unwritten.input", { file: name, input: same }));
  if (there && !overwrite) throw existsAlready(name);
  try {
    const path = there ? realpathSync(name) : join(realpathSync(dirname(name)), basename(name));
    accessSync(dirname(path), constants.W_OK | constants.X_OK);
    if (there) accessSync(path, constants.W_OK);
    return { name, path, overwrite, mode: there ? there.mode & 0o777 : undefined };
  } catch (error) {
    throw noPlace(name, error);
  }
}

const existsAlready = (file: string) => refuse(sayFiles("unwritten.exists", { file }));

/** Refuses a name under which no file can be made. */
function checkFree(name: string): void {
  let link: Stats | undefined;
  try {
    link = lstatSync(name, { throwIfNoEntry: false });
  } catch (error) {
    throw noPlace(name, error);
  }
  if (link) throw refuse(sayFiles("unwritten.danglingLink", { file: name }));
}

/** Undefined when there is no file, or it cannot be read. */
function statOf(name: string): Stats | undefined {
  try {
    return statSync(name);
  } catch {
    return undefined;
  }
}

const isSame = (a: Stats | undefined, b: Stats | undefined) =>
  a !== undefined && b !== undefined && a.dev === b.dev && a.ino === b.ino;

/** Writes the whole file, or nothing and throws a `CommandFailure`. */
export const writeOutFile = (out: OutFile, text: string): void => writeOutPieces(out, [Buffer.from(text)]);

/** The same for a text that is too large to be held at once. */
export function writeOutPieces(out: OutFile, pieces: Iterable<Buffer>): void {
  const beside = join(dirname(out.path), `.secondline-${randomBytes(6).toString("hex")}.tmp`);
  try {
    writeSafely(beside, pieces, out.mode);
    moveInto(beside, out);
    keepFolder(dirname(out.path));
  } catch (error) {
    if (error instanceof CommandFailure) throw error;
    throw refuse(sayFiles("unwritten.file", { file: out.name, why: writeTrouble(error) }));
  } finally {
    rmSync(beside, { force: true });
  }
}

/** Writes a new file and waits until the disk has it. */
function writeSafely(path: string, pieces: Iterable<Buffer>, mode: number | undefined): void {
  const file = openSync(path, "wx", mode ?? 0o666);
  try {
    for (const piece of pieces) writeFileSync(file, piece);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Moves a file to its place. A file that has come there since the check is overwritten only if the user asked for it. */
function moveInto(beside: string, { name, path, overwrite }: OutFile): void {
  if (overwrite || !link(beside, path)) {
    if (!overwrite && existsSync(path)) throw existsAlready(name);
    renameSync(beside, path);
  }
}

/**
 * Gives a file a second name. Unlike a move it never takes a name in use; false if it failed, or if the disk knows no links.
 */
function link(from: string, to: string): boolean {
  try {
    linkSync(from, to);
    return true;
  } catch {
    return false;
  }
}

/** Waits until the disk has the new name. Not every system can do that for a folder; the file is whole either way. */
function keepFolder(path: string): void {
  try {
    const folder = openSync(path, "r");
    try {
      fsyncSync(folder);
    } finally {
      closeSync(folder);
    }
  } catch {
    // Ignored: not every system can do this for a folder.
  }
}
