/** A small rig for tests, its parts invented, and runs of it. */
import { type Material, type Problem, type Recording, type SimulationOptions, simulate } from "../src/index.ts";

/** Reaches 6 kN at `strain`; branches a decade apart, as in a textile. */
export function webbing(mass: number, strain: number, share = 0.1): Material {
  return {
    mass,
    curve: [
      [0, 0],
      [strain, 6000],
    ],
    branches: [0.003, 0.03, 0.3, 3].map((time) => [(share * 6000) / strain, time] as const),
  };
}

export const FALL: Problem = {
  name: "leash fall on a short line",
  span: 20,
  rise: 0,
  main: { pretension: 2500, material: webbing(0.06, 0.04) },
  leash: { length: 1.4, material: webbing(0.08, 0.3) },
  ring: { mass: 0.1, clearance: 0.025, friction: 0.15 },
  walker: { mass: 80, at: 0.5, tieIn: 1, lateral: 0.3 },
  start: "standing",
  letGo: 0.3,
  duration: 2,
};

export const CUT: Problem = {
  ...FALL,
  name: "main line of a short rig cut at A",
  backup: { slack: 0.05, material: webbing(0.05, 0.03), connections: [{ at: 0.5 }] },
  walker: { mass: 80, at: 0.4, tieIn: 1, lateral: 0 },
  start: "hanging",
  cut: { at: 0, time: 0.05 },
};

export function run(problem: Problem, options: SimulationOptions = { accuracy: "quick" }): Recording {
  const result = simulate(problem, options);
  if (!result.ok) throw new Error(`${problem.name}: ${result.message}`);
  return result.recording;
}

/** Off by, relative to the larger of both. */
export const apart = (a: number, b: number): number => Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-300);
