/** `study`: the runs of a plan, in a folder, by one program or many, killed and resumed as it happens; `study merge` puts them together. */

import { closeSync, existsSync, openSync } from "node:fs";
import type { PlanRuns } from "@secondline/scenarios";
import { listed } from "@secondline/words";
import { saySweep } from "@secondline/words/sweep";
import { codeHash, jobsOf, runnerFor } from "../computing.ts";
import { type ComputingOptions, readComputing } from "../computingOptions.ts";
import { CommandFailure, EXIT } from "../failure.ts";
import { jsonText } from "../jsonText.ts";
import { checkOutFile, writeOutPieces } from "../outFile.ts";
import { costOf, costText, roomIn } from "../studies/cost.ts";
import { readLineAt } from "../studies/lineFile.ts";
import { makeRuns } from "../studies/makeRuns.ts";
import { readPlanFile } from "../studies/planFile.ts";
import {
  checkHead,
  type FoundResultFile,
  folderState,
  type Head,
  headOf,
  makeFolder,
  openShard,
  readResultFile,
  resultFiles,
  type Shard,
  writeFailure,
} from "../studies/resultFolder.ts";
import { lockShard } from "../studies/shardLock.ts";
import { message, print } from "../terminal.ts";

export interface StudyOptions extends ComputingOptions {
  readonly out?: string;
  readonly shard?: string;
  readonly status?: boolean;
  readonly cost?: boolean;
  readonly yes?: boolean;
  readonly json?: boolean;
}

const refuse = (...lines: readonly string[]): CommandFailure => new CommandFailure(EXIT.input, lines);

/** A longer study begins only with `--yes` [s of one core]. */
const MOST_SECONDS = 8 * 3600;
const MOST_SHARDS = 100_000;

export async function study(file: string, options: StudyOptions): Promise<void> {
  const computing = readComputing(options);
  const shard = readShard(options.shard ?? "1/1");
  const plan = readPlanFile(file);
  const { out } = options;
  const head = headOf(plan.hash, plan.plan.name, codeHash(), plan.count);
  if (options.cost) return print(costText(costOf(plan, plan.count)));
  if (out === undefined || out === "") throw refuse(saySweep("study.noFolder"));
  if (options.status) return status(plan, head, out, options.json === true);
  makeFolder(out);
  const lock = await lockShard(out, shard).catch((error: unknown) => {
    throw writeFailure(out, error);
  });
  try {
    const { done } = folderState(out, head);
    const open = openRuns(plan.count, shard, done);
    if (open.length > 0) accept(plan, open.length, out, options.yes === true);
    const { writer, dropped } = openShard(out, shard, head);
    if (dropped) message(saySweep("study.dropped"));
    try {
      await makeRuns({
        plan,
        open,
        runner: runnerFor(computing),
        jobs: jobsOf(computing),
        write(line) {
          try {
            writer.write(line);
          } catch (error) {
            throw writeFailure(out, error);
          }
        },
      });
    } finally {
      writer.close();
    }
    message(saySweep("study.done", { made: open.length, had: done.size, of: plan.count }));
  } finally {
    lock.release();
  }
}

function readShard(text: string): Shard {
  const [, index, of] = /^(\d{1,6})\/(\d{1,6})$/.exec(text) ?? [];
  const shard = { index: Number(index), of: Number(of) };
  if (shard.index >= 1 && shard.index <= shard.of && shard.of <= MOST_SHARDS) return shard;
  throw refuse(saySweep("study.shard", { text, most: MOST_SHARDS }));
}

/** Every `of`-th run is this shard's, so that all shards take about as long. */
function openRuns(count: number, { index, of }: Shard, done: ReadonlySet<number>): readonly number[] {
  const open: number[] = [];
  for (let run = index - 1; run < count; run += of) if (!done.has(run)) open.push(run);
  return open;
}

/** Tells the cost of a study, and refuses one that is too long or has no room. */
function accept(plan: PlanRuns, open: number, folder: string, yes: boolean): void {
  const cost = costOf(plan, open);
  message(costText(cost));
  if (cost.seconds > MOST_SECONDS && !yes) throw refuse(saySweep("study.long"));
  const room = roomIn(folder);
  if (room < cost.bytes) {
    throw refuse(
      saySweep("study.noRoom", { folder, needed: Math.ceil(cost.bytes / 1e6), room: Math.floor(room / 1e6) }),
    );
  }
}

function status(plan: PlanRuns, head: Head, folder: string, json: boolean): void {
  if (!existsSync(folder)) throw refuse(saySweep("study.noSuchFolder", { folder }));
  const { done, files } = folderState(folder, head);
  const open = plan.count - done.size;
  const facts = { plan: plan.hash, runs: plan.count, done: done.size, open, files };
  if (json) {
    print(jsonText(facts));
    return;
  }
  print(saySweep("study.status", { done: done.size, of: plan.count, files }));
  if (open > 0) print(costText(costOf(plan, open)));
}

export interface MergeOptions {
  readonly out: string;
  readonly force?: boolean;
  readonly partial?: boolean;
}

/** One file of all results, by run number. It is the same whichever programs made the runs, and in whatever order. */
export function merge(folders: readonly string[], { out: name, force, partial }: MergeOptions): void {
  const files = folders.flatMap(resultFiles);
  const found = files.flatMap((file) => readResultFile(file) ?? []);
  const first = found[0];
  if (!first) throw refuse(saySweep("study.nothing", { list: listed(folders) }));
  for (const one of found) checkHead(one.file, one.head, first.head);
  const out = checkOutFile(name, force === true, files);
  const opened = found.map(({ file }) => openSync(file, "r"));
  try {
    const places = placesOf(found, opened, first.head.runs);
    const missing = first.head.runs - places.size;
    if (missing > 0 && !partial) throw refuse(saySweep("study.missing", { missing, of: first.head.runs }));
    writeOutPieces(out, pieces(first.head, places, found, opened));
    message(saySweep("study.merged", { runs: places.size, file: name }));
  } finally {
    for (const one of opened) closeSync(one);
  }
}

/** The file of every run. A run that is in two files must be the same in both. */
function placesOf(
  found: readonly FoundResultFile[],
  opened: readonly number[],
  runs: number,
): ReadonlyMap<number, number> {
  const places = new Map<number, number>();
  found.forEach(({ file, lines }, f) => {
    for (const [run, at] of lines) {
      const other = places.get(run);
      if (other === undefined) places.set(run, f);
      else if (!readLineAt(opened[f]!, at).equals(readLineAt(opened[other]!, found[other]!.lines.get(run)!))) {
        throw refuse(saySweep("study.differs", { run, file, other: found[other]!.file }));
      }
      if (run >= runs) throw refuse(saySweep("study.damaged", { file, line: run }));
    }
  });
  return places;
}

const NEWLINE = Buffer.from("\n");

function* pieces(
  head: Head,
  places: ReadonlyMap<number, number>,
  found: readonly FoundResultFile[],
  opened: readonly number[],
): Generator<Buffer> {
  yield Buffer.from(`${JSON.stringify(head)}\n`);
  for (let run = 0; run < head.runs; run++) {
    const f = places.get(run);
    if (f === undefined) continue;
    yield Buffer.concat([readLineAt(opened[f]!, found[f]!.lines.get(run)!), NEWLINE]);
  }
}
