/**
 * One program at a time writes a shard. The program writes its machine and process number into a lock beside the file, and
 * touches the lock every few seconds. Another program takes the lock over if the first has ended on this machine, or if nobody
 * touches the lock any more.
 */
import { randomUUID } from "node:crypto";
import { linkSync, readFileSync, renameSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { saySweep } from "@secondline/words/sweep";
import { CommandFailure, EXIT } from "../failure.ts";
import type { Shard } from "./resultFolder.ts";

const HEARTBEAT_MS = 4000;
/** A lock that is not touched for this many heartbeats is abandoned [-]. */
const SILENT_HEARTBEATS = 4;

export interface ShardLock {
  readonly release: () => void;
}

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

export async function lockShard(folder: string, { index, of }: Shard): Promise<ShardLock> {
  const path = join(folder, `runs-${index}-of-${of}.lock`);
  const mine = `${hostname()} ${process.pid} ${randomUUID()}\n`;
  for (let tries = 0; tries < 3; tries++) {
    if (takesLock(path, mine)) return held(path, mine);
    await takeAwayIfDead(path, () => {
      throw new CommandFailure(EXIT.input, [saySweep("study.locked", { file: path, who: lockText(path) ?? "" })]);
    });
  }
  throw new CommandFailure(EXIT.input, [saySweep("study.locked", { file: path, who: lockText(path) ?? "" })]);
}

/** The lock is written beside its place first, so that nobody meets a lock without its text. */
function takesLock(path: string, mine: string): boolean {
  const beside = `${path}.${randomUUID()}`;
  writeFileSync(beside, mine);
  try {
    linkSync(beside, path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  } finally {
    rmSync(beside, { force: true });
  }
}

function held(path: string, mine: string): ShardLock {
  const beat = setInterval(() => {
    try {
      utimesSync(path, new Date(), new Date());
    } catch {
      // A disk may be away for a moment. If another program took the lock over meanwhile, the text of the lock shows it.
    }
  }, HEARTBEAT_MS);
  beat.unref();
  return {
    release() {
      clearInterval(beat);
      if (lockText(path) === mine) rmSync(path, { force: true });
    },
  };
}

function lockText(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}

/** Takes a lock away whose program has ended; calls `alive` when it has not. */
async function takeAwayIfDead(path: string, alive: () => never): Promise<void> {
  const text = lockText(path);
  if (text === undefined) return;
  const [host = "", pid = ""] = text.split(" ");
  if (host === hostname() && pid !== "") {
    if (isRunning(Number(pid))) alive();
  } else if (!(await isSilent(path))) alive();
  if (lockText(path) !== text) return;
  const aside = `${path}.${randomUUID()}`;
  try {
    renameSync(path, aside);
    rmSync(aside, { force: true });
  } catch {
    // Another program was quicker.
  }
}

function isRunning(pid: number): boolean {
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

/** The disk's clock counts, not ours. */
async function isSilent(path: string): Promise<boolean> {
  const touched = () => {
    try {
      return statSync(path).mtimeMs;
    } catch {
      return undefined;
    }
  };
  const before = touched();
  await wait(HEARTBEAT_MS * SILENT_HEARTBEATS);
  const after = touched();
  return after === undefined || after === before;
}
