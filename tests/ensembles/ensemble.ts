/**
 * Ensembles of an independent program (another language, brute force, mesh of 0.125 m): runs of one problem that differ a little
 * in the walker's mass, the place and the moment of the cut. Catches on a backup are chaotic, so that means and spreads are
 * compared, never single runs.
 */
import { readdirSync, readFileSync } from "node:fs";
import { type Problem, readProblem, type SimulationOptions, simulate } from "@secondline/engine";

/** Loads that are compared [N], by their names in the files. */
export const LOADS = ["leash", "mainA", "mainB", "backupA", "backupB"] as const;
export type Load = (typeof LOADS)[number];
export type Quantity = Load | "drop";
export const QUANTITIES: readonly Quantity[] = [...LOADS, "drop"];

/** What one run gave: loads after CFC 60 [N], the walker's drop [m]. */
export type Draw = Readonly<Record<Quantity, number>>;

/** The reference's runs of one problem. */
export interface Ensemble {
  readonly name: string;
  readonly problem: Problem;
  readonly runs: readonly {
    readonly mass: number;
    readonly at: number;
    readonly cutTime?: number;
    readonly reference: Draw;
  }[];
  /** Shift of the reference's mean when its mesh is doubled [%]. */
  readonly uncertainty: Readonly<Record<Quantity, number>>;
}

const folder = new URL("data/", import.meta.url);

export const ensembleNames: readonly string[] = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .map((name) => name.replace(".json", ""))
  .sort();

export function readEnsemble(name: string): Ensemble {
  const file = JSON.parse(readFileSync(new URL(`${name}.json`, folder), "utf8"));
  const reading = readProblem(file.problem);
  if (!reading.ok) throw new Error(`${name}: ${JSON.stringify(reading.issues)}`);
  return { name, problem: reading.problem, runs: file.runs, uncertainty: file.uncertainty };
}

/** The reference's half ranges: share of the mass [-], place [-], moment of the cut [s]. */
const MASS = 0.01;
const PLACE = 0.004;
const MOMENT = 0.01;

/** Numbers from −1 to 1, evenly spread, the same for the same seed (mulberry32). */
export function drawer(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return 2 * (((t ^ (t >>> 14)) >>> 0) / 4294967296) - 1;
  };
}

/** A problem a little different: three numbers of `draw` are taken, whatever the problem. */
export function perturbed(problem: Problem, draw: () => number): Problem {
  const [mass, at, time] = [MASS * draw(), PLACE * draw(), MOMENT * draw()];
  const { walker, cut } = problem;
  return {
    ...problem,
    walker: { ...walker, mass: walker.mass * (1 + mass), at: walker.at + at },
    ...(cut ? { cut: { ...cut, time: Math.max(0, cut.time + time) } } : {}),
  };
}

/** One run on a mesh, by default the one that verdicts use; a run that fails its own checks throws. */
export function drawOf(problem: Problem, options: SimulationOptions = { accuracy: "standard" }): Draw {
  const result = simulate(problem, options);
  if (!result.ok) throw new Error(`${problem.name}: ${result.message}`);
  const { peaks, walker } = result.recording;
  return {
    leash: peaks.leash.cfc60,
    mainA: peaks.mainA.cfc60,
    mainB: peaks.mainB.cfc60,
    backupA: peaks.backupA.cfc60,
    backupB: peaks.backupB.cfc60,
    drop: walker.drop,
  };
}

/** So many slightly different runs of a problem. */
export function drawsOf(problem: Problem, count: number, seed: number, options?: SimulationOptions): Draw[] {
  const draw = drawer(seed);
  return Array.from({ length: count }, () => drawOf(perturbed(problem, draw), options));
}
