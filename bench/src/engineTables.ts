/** The engine on the reference problems and its kernels, in Node and in the browser's worker. */
import { inChromium } from "./chromium.ts";
import { digits, type Notes } from "./notes.ts";
import { kilometre, referenceProblems, straightLaw, tableLaw } from "./problems.ts";
import { KERNELS, type LineTimes, type RunTimes, timeLine, timePlainLine, timeRun } from "./runs.ts";
import { table } from "./table.ts";

function lineRows(lines: readonly LineTimes[], where: string, note: Notes["note"]): string[][] {
  return lines.map(({ kernel, branches, curve, elements, perElementStep, checksum }) => [
    `${curve} law, ${branches} branches, ${elements} elements`,
    kernel,
    digits(perElementStep, 2),
    note(`${where} line ${curve} ${elements} ${kernel} [ns]`, perElementStep),
    checksum,
  ]);
}
const LINE_HEAD = ["line by itself", "kernel", "ns/element-step", "to kept", "checksum"];

function runRows(runs: readonly RunTimes[], where: string, note: Notes["note"]): string[][] {
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

export async function engineTables(rounds: number, { note }: Notes): Promise<void> {
  const problems = referenceProblems();
  const materials = [straightLaw(problems), tableLaw(problems)];
  const lines = materials.flatMap((material) => KERNELS.map((kernel) => timeLine(material, 118, kernel, rounds)));
  console.log(table("Kernels", LINE_HEAD, lineRows(lines, "node", note)));

  const runs = problems.flatMap((problem) => KERNELS.map((kernel) => timeRun(problem, kernel, rounds)));
  console.log(table("Problems, from the file's numbers to the recording", RUN_HEAD, runRows(runs, "node", note)));

  const plain = timePlainLine(materials[0]!, 118, 4, rounds);
  const fine = timePlainLine(materials[0]!, 944, 4, 1);
  const off = (100 * (plain.peak - fine.peak)) / fine.peak;
  console.log("\nPlain line of 60 m, 118 elements, four branches, 80 kg in its middle, 4 s");
  console.log(
    `${digits(plain.time)} ms (to kept ${note("node plain line [ms]", plain.time)}); peak ${digits(plain.peak)} N, ${digits(off, 2)} % off that of 944 elements`,
  );

  const long = timeRun(kilometre(problems), "wasm", Math.min(rounds, 3));
  console.log(table("A kilometre, two connections, 10 s", RUN_HEAD, runRows([long], "node", note)));
  console.log(`Memory of this recording of 10 s: ${digits(long.memory / 1e6)} MB`);

  const tenSeconds = { ...problems.find(({ name }) => name === "cut-60-connected")!, duration: 10 };
  console.log(`Memory of cut-60-connected over 10 s: ${digits(timeRun(tenSeconds, "wasm", 1).memory / 1e6)} MB`);

  const decade = [30, 60, 120, 240, 300].flatMap((elements) =>
    KERNELS.map((kernel) => timeLine(materials[0]!, elements, kernel, rounds)),
  );
  console.log(table("Cost over a decade of elements", LINE_HEAD, lineRows(decade, "node", note)));

  const browser = await inChromium({ problems, materials, elements: 118, rounds });
  if (browser) {
    const { version, answer } = browser;
    console.log(
      table(`Kernels in a worker of Chromium ${version}`, LINE_HEAD, lineRows(answer.lines, "chromium", note)),
    );
    console.log(table(`Problems in a worker of Chromium ${version}`, RUN_HEAD, runRows(answer.runs, "chromium", note)));
  } else console.log("\nNo Chrome or Chromium found: the tables of the browser's worker are left out.");
}
