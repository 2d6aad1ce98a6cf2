/**
 * Results of runs in a folder, one file each: a line that names the format, then the value as Node serialises it, to the bit. A
 * file is written beside its place and then renamed, so that no reader meets half a file, and several programs may share a
 * folder. A file that cannot be read, is torn, or has another format counts as absent.
 */
import { createHash } from "node:crypto";
import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { deserialize, serialize } from "node:v8";
import type { RunResult } from "@secondline/scenarios";
import type { RunResults } from "./runResults.ts";

/** Changes whenever older files cannot be read any more. */
const FILE_FORMAT = "secondline-run 1";
const NEWLINE = 10;
const MOST_BYTES = 512 * 2 ** 20;

export interface FolderResultsOptions {
  readonly folder: string;
  /** Names the code that makes the runs, such as a hash of the worker's bundle: results of another code are not found. */
  readonly code: string;
  /** Largest size of the folder; the files used longest ago go first [bytes]. */
  readonly mostBytes?: number;
}

/** Never throws: a folder that cannot be used has no results and keeps none. */
export function folderResults({ folder, code, mostBytes = MOST_BYTES }: FolderResultsOptions): RunResults {
  let written = 0;
  let tidied: Promise<void> | undefined;
  const placeOf = (key: string) => {
    const name = sha256(`${code} ${key}`);
    return { folder: join(folder, name.slice(0, 2)), name };
  };
  const read = async (key: string): Promise<RunResult | undefined> => {
    const place = placeOf(key);
    const file = join(place.folder, place.name);
    try {
      const result = unpacked(await readFile(file));
      if (result) await utimes(file, new Date(), new Date());
      return result;
    } catch {
      return undefined;
    }
  };
  return {
    get: (keys) => Promise.all(keys.map(read)),
    async put(key, result) {
      const place = placeOf(key);
      const unfinished = join(place.folder, `${place.name}.${process.pid}.${++written}.part`);
      try {
        // Tidies once in the life of a program, which itself adds little.
        tidied ??= tidy(folder, mostBytes);
        await tidied;
        await mkdir(place.folder, { recursive: true });
        await writeFile(unfinished, packedResult(result));
        await rename(unfinished, join(place.folder, place.name));
      } catch {
        await rm(unfinished, { force: true }).catch(() => undefined);
      }
    },
  };
}

function packedResult(result: RunResult): Buffer {
  const body = serialize(result);
  return Buffer.concat([Buffer.from(`${FILE_FORMAT} ${sha256(body)}\n`), body]);
}

function unpacked(file: Buffer): RunResult | undefined {
  const end = file.indexOf(NEWLINE);
  const body = file.subarray(end + 1);
  if (end < 0 || file.subarray(0, end).toString() !== `${FILE_FORMAT} ${sha256(body)}`) return undefined;
  return deserialize(body) as RunResult;
}

const sha256 = (value: string | Buffer): string => createHash("sha256").update(value).digest("hex");

/** Touches only files with our names, in folders with our names. */
const OUR_FOLDER = /^[\da-f]{2}$/;
const OUR_FILE = /^[\da-f]{64}(\.\d+\.\d+\.part)?$/;

/** Removes the files used longest ago until the rest take no more than `mostBytes`. */
async function tidy(folder: string, mostBytes: number): Promise<void> {
  await mkdir(folder, { recursive: true });
  const files: { readonly path: string; readonly bytes: number; readonly used: number }[] = [];
  for (const inner of (await readdir(folder)).filter((name) => OUR_FOLDER.test(name))) {
    for (const name of (await readdir(join(folder, inner))).filter((one) => OUR_FILE.test(one))) {
      const path = join(folder, inner, name);
      const found = await stat(path).catch(() => undefined);
      if (found) files.push({ path, bytes: found.size, used: found.mtimeMs });
    }
  }
  let total = files.reduce((sum, { bytes }) => sum + bytes, 0);
  for (const { path, bytes } of files.sort((a, b) => a.used - b.used)) {
    if (total <= mostBytes) return;
    await rm(path, { force: true });
    total -= bytes;
  }
}
