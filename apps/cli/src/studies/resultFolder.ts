/** Results of a study in a folder: one file per shard, with a head that names the plan, then a line per finished run. */
import { closeSync, existsSync, mkdirSync, openSync, readdirSync, readSync } from "node:fs";
import { join } from "node:path";
import { VERSION } from "@secondline/scenarios";
import { saySweep } from "@secondline/words/sweep";
import { CommandFailure, EXIT } from "../failure.ts";
import { readTrouble, writeTrouble } from "../fileTrouble.ts";
import { cutFileAt, type LineAt, LineWriter, scanLines } from "./lineFile.ts";

export const RUNS_FORMAT = "study-runs/1";

/** First line of every file of results. */
export interface Head {
  readonly secondline: typeof RUNS_FORMAT;
  /** Hash of the plan with its rig files. */
  readonly plan: string;
  readonly name: string;
  readonly version: string;
  /** Hash of the program's own code. */
  readonly code: string;
  readonly runs: number;
}

export interface Shard {
  /** Number of the shard, from 1. */
  readonly index: number;
  readonly of: number;
}

export interface FoundResultFile {
  readonly file: string;
  readonly head: Head;
  readonly lines: ReadonlyMap<number, LineAt>;
  readonly torn: boolean;
}

export const headOf = (plan: string, name: string, code: string, runs: number): Head => ({
  secondline: RUNS_FORMAT,
  plan,
  name,
  version: VERSION,
  code,
  runs,
});

const refuse = (...lines: readonly string[]): CommandFailure => new CommandFailure(EXIT.input, lines);
const RESULT_FILE = /^runs-(\d+)-of-(\d+)\.jsonl$/;
const fileOf = ({ index, of }: Shard): string => `runs-${index}-of-${of}.jsonl`;

/** Files of results in a folder, by name. */
export function resultFiles(folder: string): readonly string[] {
  try {
    return readdirSync(folder)
      .filter((name) => RESULT_FILE.test(name))
      .sort()
      .map((name) => join(folder, name));
  } catch (error) {
    throw refuse(`${folder}: ${readTrouble(error)}`);
  }
}

/** Reads a file of results; undefined if not even its head is whole. Damage other than a torn end is refused. */
export function readResultFile(file: string): FoundResultFile | undefined {
  let head: Head | undefined;
  const lines = new Map<number, LineAt>();
  let torn = false;
  try {
    ({ torn } = scanLines(file, (text, at, number) => {
      if (number === 1) {
        head = headIn(file, text);
        return;
      }
      const run = runIn(text);
      if (run === undefined || run >= head!.runs) throw refuse(saySweep("study.damaged", { file, line: number }));
      if (lines.has(run)) throw refuse(saySweep("study.twice", { file, line: number, run }));
      lines.set(run, at);
    }));
  } catch (error) {
    if (error instanceof CommandFailure) throw error;
    throw refuse(`${file}: ${readTrouble(error)}`);
  }
  return head && { file, head, lines, torn };
}

function headIn(file: string, text: string): Head {
  const head = parsed(text);
  if (head?.secondline === RUNS_FORMAT && typeof head.plan === "string" && Number.isInteger(head.runs)) {
    return head as unknown as Head;
  }
  throw refuse(saySweep("study.notOurs", { file }));
}

function runIn(text: string): number | undefined {
  const run = text.endsWith("}") ? parsed(text)?.run : undefined;
  return typeof run === "number" && Number.isInteger(run) && run >= 0 ? run : undefined;
}

function parsed(text: string): Record<string, unknown> | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null ? (value as Record<string, unknown>) : undefined;
  } catch {
    return undefined;
  }
}

/** Refuses results of another plan, another version or another build of the program. */
export function checkHead(file: string, found: Head, wanted: Head): void {
  if (found.version !== wanted.version || found.code !== wanted.code) {
    throw refuse(saySweep("study.otherVersion", { file, theirs: found.version, ours: wanted.version }));
  }
  if (found.plan !== wanted.plan) throw refuse(saySweep("study.otherPlan", { file, name: found.name }));
}

/** Finished runs of all shards in a folder. */
export interface FolderState {
  readonly done: ReadonlySet<number>;
  readonly files: number;
}

export function folderState(folder: string, head: Head): FolderState {
  const done = new Set<number>();
  const files = existsSync(folder) ? resultFiles(folder) : [];
  for (const file of files) {
    const found = readResultFile(file);
    if (!found) continue;
    checkHead(file, found.head, head);
    for (const run of found.lines.keys()) done.add(run);
  }
  return { done, files: files.length };
}

export function makeFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    throw refuse(`${folder}: ${writeTrouble(error)}.`);
  }
}

/** Opens the shard's file to go on with it. A torn end is cut off: that run is made again. `dropped`: whether there was one. */
export function openShard(
  folder: string,
  shard: Shard,
  head: Head,
): { readonly writer: LineWriter; readonly dropped: boolean } {
  const file = join(folder, fileOf(shard));
  try {
    let dropped = false;
    if (existsSync(file)) {
      const { end, torn } = scanLines(file, () => undefined);
      dropped = torn;
      if (torn) cutFileAt(file, end);
    }
    const writer = new LineWriter(file);
    if (isEmpty(file)) writer.write(JSON.stringify(head));
    return { writer, dropped };
  } catch (error) {
    throw writeFailure(file, error);
  }
}

export const writeFailure = (file: string, error: unknown): CommandFailure =>
  error instanceof CommandFailure ? error : refuse(saySweep("study.notWritten", { file, why: writeTrouble(error) }));

function isEmpty(path: string): boolean {
  const file = openSync(path, "r");
  try {
    return readSync(file, Buffer.alloc(1), 0, 1, 0) === 0;
  } finally {
    closeSync(file);
  }
}
