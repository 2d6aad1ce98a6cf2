/**
 * Holds searches against brute force: hours on two cores, minutes on many.
 *   node go.mjs brute-force [RIG …] [--events N] [--draws N] [--unchosen N] [--jobs N] [--out FILE]
 * Without a name all six rigs. FILE gets a line of JSON for each case as soon as it is known, and one for each rig that is done.
 * What comes of it is in docs/decisions/0002-one-rule.md.
 */
import { appendFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { parseArgs } from "node:util";
import { withPool } from "../assessments.ts";
import { table } from "../table.ts";
import { type BruteForced, bruteForce, type Case, type Chosen } from "./bruteForce.ts";
import { BRUTE_FORCE_RIGS, bruteForceRig } from "./rigs.ts";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    events: { type: "string", default: "2000" },
    draws: { type: "string", default: "400" },
    unchosen: { type: "string", default: "10" },
    jobs: { type: "string", default: String(availableParallelism()) },
    out: { type: "string" },
  },
});

const size = { events: whole("events"), draws: whole("draws"), unchosen: whole("unchosen") };
const names = positionals.length > 0 ? positionals : BRUTE_FORCE_RIGS;
const rigs = names.map(bruteForceRig);
const results: { readonly rig: string; readonly found: BruteForced }[] = [];
for (const { name, assessed } of rigs) {
  const begun = performance.now();
  const keep = (cases: readonly Case[]) => keepLines(cases.map((one) => ({ rig: name, ...one })));
  const found = await withPool(whole("jobs"), (runner) => bruteForce(runner, assessed, size, keep));
  results.push({ rig: name, found });
  const seconds = ((performance.now() - begun) / 1000).toFixed(0);
  console.log(
    `${name}: ${found.verdict} after ${found.searchRuns} runs; ${found.freshRuns} fresh draws (${found.failed} without numbers), ${seconds} s`,
  );
  console.log(beyondTable(found));
  const { cases: _, ...done } = found;
  keepLines([{ rig: name, size, ...done, seconds: Number(seconds) }]);
}
console.log(summary(results.map(({ found }) => found)));

function keepLines(lines: readonly object[]): void {
  if (values.out) appendFileSync(values.out, lines.map((line) => `${JSON.stringify(line)}\n`).join(""));
}

function whole(name: "events" | "draws" | "unchosen" | "jobs"): number {
  const value = Number(values[name]);
  if (!Number.isInteger(value) || value < 1) throw new Error(`--${name} must be a whole number from 1 on.`);
  return value;
}

function percent(value: number): string {
  return `${(100 * value).toFixed(1)} %`;
}

function beyondTable({ cases }: BruteForced): string {
  const rows = cases
    .filter((one) => one.beyond || (one.governing && one.tooMany))
    .map((one) => [
      one.event,
      one.chosen,
      one.of,
      one.governing ? "yes" : "",
      one.share.toFixed(2),
      percent(one.over),
      percent(one.error),
      percent(one.above),
    ]);
  const head = ["event", "chosen", "of", "governs", "E of what may be asked", "over E", "its error", "above E"];
  return table("Beyond 3 % and two standard errors, or too many above E", head, rows);
}

function summary(all: readonly BruteForced[]): string {
  const cases = all.flatMap((one) => one.cases);
  const isFall = ({ of }: Case) => of === "drop" || of === "feet";
  const row = (name: string, some: readonly Case[]) => [
    name,
    String(some.length),
    percent(Math.max(...some.map(({ over }) => over))),
    percent(some.reduce((sum, { above }) => sum + above, 0) / some.length),
    String(some.filter(({ over }) => over > 0.03).length),
    String(some.filter(({ beyond }) => beyond).length),
    String(some.filter(({ tooMany }) => tooMany).length),
  ];
  const of = (chosen: Chosen) => cases.filter((one) => one.chosen === chosen && !one.governing && !isFall(one));
  const rows = [
    row(
      "own worst event of each part",
      cases.filter((one) => one.governing && !isFall(one)),
    ),
    row("own worst events, other parts", of("own")),
    row("nominated by chance", of("nominated")),
    row("neither", of("unchosen")),
    row("drop and feet", cases.filter(isFall)),
  ].filter(([, count]) => count !== "0");
  const head = ["events", "cases", "most over E", "draws above E", "over 3 %", "beyond", "too many above"];
  return table("All rigs", head, rows);
}
