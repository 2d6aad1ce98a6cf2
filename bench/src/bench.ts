/**
 * Times the engine and prints tables. Nothing here passes or fails: figures belong to a machine and its mood.
 *   node go.mjs bench            all tables
 *   node go.mjs bench --quick    fewer rounds
 *   node go.mjs bench --save     also keeps the figures in bench/baseline.json, which later runs compare with
 */
import { type Figures, machine, readBaseline, saveBaseline } from "./baseline.ts";
import { inChromium } from "./chromium.ts";
import { kilometre, referenceProblems, straightLaw, tableLaw } from "./problems.ts";
import { KERNELS, type LineTimes, type RunTimes, timeLine, timePlainLine, timeRun } from "./runs.ts";
import { table } from "./table.ts";

const rounds = process.argv.includes("--quick") ? 3 : 12;
const baseline = readBaseline();
const figures: Record<string, number> = {};
const digits = (value: number, count = 1): string => value.toFixed(count);

/** Notes a figure; returns it as text beside its ratio to the kept one. */
function note(name: string, value: number): string {
  figures[name] = value;
  const kept = baseline?.figures[name];
  return kept === undefined ? "–" : digits(value / kept, 2);
}

function lineRows(lines: readonly LineTimes[], where: string): string[][] {
  return lines.map(({ kernel, branches, curve, elements, perElementStep, checksum }) => [
    `${curve} law, ${branches} branches, ${elements} elements`,
    kernel,
    digits(perElementStep, 2),
    note(`${where} line ${curve} ${elements} ${kernel} [ns]`, perElementStep),
    checksum,
  ]);
}
const LINE_HEAD = ["line by itself", "kernel", "ns/element-step", "to kept", "checksum"];

function runRows(runs: readonly RunTimes[], where: string): string[][] {
  return runs.map((run) => [
    run.name,
    run.kernel,
    String(run.elements),
    String(run.steps),
    digits(run.firstBuild),
    digits(run.build),
    digits(run.run),
    digits(run.result),
    digits(run.realTime),
    digits(run.perElementStep, 2),
    note(`${where} ${run.name} ${run.kernel} [ms]`, run.total),
    run.checksum,
  ]);
}
const RUN_HEAD = [
  "problem",
  "kernel",
  "elements",
  "steps",
  "rest, first [ms]",
  "rest [ms]",
  "steps [ms]",
  "recording [ms]",
  "× real time",
  "ns/element-step",
  "to kept",
  "checksum",
];

const problems = referenceProblems();
const materials = [straightLaw(problems), tableLaw(problems)];
console.log(`Node ${process.version}, ${machine()}`);
console.log(
  `Least time of each slice over ${rounds} rounds, summed. "to kept": ratio to bench/baseline.json, below 1 is faster.`,
);
if (baseline) console.log(`Kept figures: Node ${baseline.node}, ${baseline.machine}`);

const lines = materials.flatMap((material) => KERNELS.map((kernel) => timeLine(material, 118, kernel, rounds)));
console.log(table("Kernels", LINE_HEAD, lineRows(lines, "node")));

const runs = problems.flatMap((problem) => KERNELS.map((kernel) => timeRun(problem, kernel, rounds)));
console.log(table("Problems, from the file's numbers to the recording", RUN_HEAD, runRows(runs, "node")));

const plain = timePlainLine(materials[0]!, 118, 4, rounds);
const fine = timePlainLine(materials[0]!, 944, 4, 1);
const off = (100 * (plain.peak - fine.peak)) / fine.peak;
console.log("\nPlain line of 60 m, 118 elements, four branches, 80 kg in its middle, 4 s");
console.log(
  `${digits(plain.time)} ms (to kept ${note("node plain line [ms]", plain.time)}); peak ${digits(plain.peak)} N, ${digits(off, 2)} % off that of 944 elements`,
);

const long = timeRun(kilometre(problems), "wasm", Math.min(rounds, 3));
console.log(table("A kilometre, two connections, 10 s", RUN_HEAD, runRows([long], "node")));
console.log(`Memory of this recording of 10 s: ${digits(long.memory / 1e6)} MB`);

const tenSeconds = { ...problems.find(({ name }) => name === "cut-60-connected")!, duration: 10 };
console.log(`Memory of cut-60-connected over 10 s: ${digits(timeRun(tenSeconds, "wasm", 1).memory / 1e6)} MB`);

const decade = [30, 60, 120, 240, 300].flatMap((elements) =>
  KERNELS.map((kernel) => timeLine(materials[0]!, elements, kernel, rounds)),
);
console.log(table("Cost over a decade of elements", LINE_HEAD, lineRows(decade, "node")));

const browser = await inChromium({ problems, materials, elements: 118, rounds });
if (browser) {
  const { version, answer } = browser;
  console.log(table(`Kernels in a worker of Chromium ${version}`, LINE_HEAD, lineRows(answer.lines, "chromium")));
  console.log(table(`Problems in a worker of Chromium ${version}`, RUN_HEAD, runRows(answer.runs, "chromium")));
} else console.log("\nNo Chrome or Chromium found: the tables of the browser's worker are left out.");

if (process.argv.includes("--save")) {
  saveBaseline(figures satisfies Figures);
  console.log("\nKept these figures in bench/baseline.json.");
}
