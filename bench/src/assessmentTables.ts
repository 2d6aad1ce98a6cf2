/**
 * Assessments, sweeps and single runs of demo rigs, in seconds and as multiples of a fixed kernel that is timed in the same process
 * beside each of them: the multiples say more than seconds where other programs share the machine.
 */
import { availableParallelism } from "node:os";
import { type DemoRig, demoRig, type Size, timeAssessment, timeRuns, timeSweep } from "./assessments.ts";
import { digits, type Notes } from "./notes.ts";
import { referenceProblems, straightLaw } from "./problems.ts";
import { timeLine } from "./runs.ts";
import { table } from "./table.ts";

/** Elements and rounds of the fixed kernel; its steps are those of `timeLine` [-]. */
const KERNEL = { elements: 118, steps: 8000, rounds: 6 } as const;
const SWEEP_POINTS = 25;

/** Time of the fixed kernel now [ms]. */
function kernelTime(): number {
  const { elements, steps, rounds } = KERNEL;
  const { perElementStep } = timeLine(straightLaw(referenceProblems()), elements, "wasm", rounds);
  return (perElementStep * elements * steps) / 1e6;
}

/** Does work and times the kernel before and after it; the shorter of the two counts [ms]. */
async function besideKernel<T>(work: () => T | Promise<T>): Promise<{ readonly done: T; readonly kernel: number }> {
  const before = kernelTime();
  const done = await work();
  return { done, kernel: Math.min(before, kernelTime()) };
}

const seconds = (ms: number | undefined): string => (ms === undefined ? "–" : digits(ms / 1000, 1));
const times = (ms: number | undefined, kernel: number): string => (ms === undefined ? "–" : digits(ms / kernel, 0));

export async function assessmentTables(quick: boolean, { note }: Notes): Promise<void> {
  const rigs = [
    demoRig("sound-rig"),
    ...(quick ? [] : [demoRig("loose-backup"), demoRig("old-rig", { file: "old-rig-wear", on: "2026-07-10" })]),
  ];
  const sound = rigs[0]!;
  const { elements, steps } = KERNEL;
  console.log(
    `\nIn kernels: multiples of a line by itself, WebAssembly, ${elements} elements, ${steps} steps; now ${digits(kernelTime())} ms.`,
  );
  const cores = availableParallelism();
  if (cores < 2) console.log("One core: two workers share it.");
  console.log(await runsTable(quick ? [sound] : rigs, quick ? 6 : 40, note));
  console.log(await studiesTable(rigs, quick ? "quick" : "full", note));
  console.log(await sweepTable(sound, quick ? 5 : SWEEP_POINTS, quick ? "quick" : "full", note));
}

async function runsTable(rigs: readonly DemoRig[], most: number, note: Notes["note"]): Promise<string> {
  const rows: string[][] = [];
  for (const rig of rigs) {
    timeRuns(rig, 1);
    const { done, kernel } = await besideKernel(() => timeRuns(rig, most));
    const each = done.each / kernel;
    rows.push([rig.name, String(done.runs), digits(done.each, 0), digits(each, 1), note(`run ${rig.name}`, each)]);
  }
  return table("A run of a demo rig's set, one thread", ["rig", "runs", "each [ms]", "kernels", "to kept"], rows);
}

async function studiesTable(rigs: readonly DemoRig[], size: Size, note: Notes["note"]): Promise<string> {
  const rows: string[][] = [];
  for (const rig of rigs) {
    let alone: number | undefined;
    for (const jobs of [1, 2]) {
      const { done, kernel } = await besideKernel(() => timeAssessment(rig, jobs, size));
      const { verdict, runs, whole, fails } = done;
      rows.push([
        rig.name,
        String(jobs),
        verdict,
        String(runs),
        seconds(whole),
        times(whole, kernel),
        note(`assessment ${rig.name} ${size} ${jobs}`, whole / kernel),
        alone === undefined ? "–" : digits(alone / whole, 2),
        seconds(fails),
        times(fails, kernel),
      ]);
      alone = whole;
    }
  }
  const head = [
    "rig",
    "workers",
    "verdict",
    "runs",
    "whole [s]",
    "kernels",
    "to kept",
    "× faster",
    "first sure fails [s]",
    "kernels",
  ];
  const what = size === "full" ? "the whole search" : "the few what-ifs that usually govern";
  return table(`Assessment of a demo rig, ${what}, nothing kept`, head, rows);
}

async function sweepTable(rig: DemoRig, count: number, size: Size, note: Notes["note"]): Promise<string> {
  const rows: string[][] = [];
  for (const jobs of [1, 2]) {
    const { done, kernel } = await besideKernel(() => timeSweep(rig, count, jobs, size));
    const { runs, points, whole } = done;
    rows.push([
      `${rig.name}, backup.slack=2%..14%`,
      String(jobs),
      String(points),
      String(runs),
      seconds(whole),
      times(whole, kernel),
      note(`sweep ${points} ${size} ${jobs}`, whole / kernel),
    ]);
  }
  return table("Sweep", ["rig", "workers", "points", "runs", "whole [s]", "kernels", "to kept"], rows);
}
