/**
 * What a problem costs to compute, and which ones are refused: lines that no fibre makes, and runs that would take hours. Both are
 * known before the first step.
 */
import { sectionsOf } from "../line/line.ts";
import { buildModel, type ModelOptions, type StepLimits, waveSpeed } from "../line/model.ts";
import type { Problem } from "../problem.ts";
import type { ProblemIssue } from "../record/recording.ts";

/** Work of a run, to be multiplied by what a machine takes for an element-step (some 10 to 40 ns). */
export interface RunCost {
  readonly elements: number;
  /** [s] */
  readonly step: number;
  readonly steps: number;
  readonly elementSteps: number;
  /** What is so stiff and light that the step must be so short. */
  readonly governedBy: keyof StepLimits;
}

/** What a run of a checked problem will cost, without starting it. */
export function estimateCost(problem: Problem, options: ModelOptions = {}): RunCost {
  const { main, backup, step, limits } = buildModel(problem, options);
  const elements = main.elements + (backup?.elements ?? 0);
  const steps = Math.ceil(problem.duration / step);
  const governedBy = (Object.keys(limits) as (keyof StepLimits)[]).reduce((a, b) => (limits[b] < limits[a] ? b : a));
  return { elements, step, steps, elementSteps: elements * steps, governedBy };
}

/**
 * Fastest pull in a line that is believed [m/s]. In the stiffest fibres there are it travels at 10 to 12 km/s; above 20 km/s
 * a unit is wrong, or a slow-pull curve has a step in it where its points are too close.
 */
const FASTEST_PULL = 20_000;
/** Most work on the mesh that verdicts use, and in any run [element-steps]: minutes, and an hour. */
const MOST_ELEMENT_STEPS = 2e10;
const MOST_ELEMENT_STEPS_EVER = 1e11;

/** Why a problem may not be run, with what was got and what was expected; empty if it may be run. */
export function limitIssues(problem: Problem, options?: ModelOptions): ProblemIssue[] {
  const issues = stiffnessIssues(problem);
  return issues.length > 0 ? issues : costIssues(problem, options);
}

function stiffnessIssues(problem: Problem): ProblemIssue[] {
  const parts = (["main", "backup"] as const).flatMap((name) => {
    const make = problem[name];
    if (!make) return [];
    return sectionsOf(make).map(({ material }, k) => ({
      path: make.sections ? `${name}.sections[${k}].material` : `${name}.material`,
      material,
    }));
  });
  return [...parts, { path: "leash.material", material: problem.leash.material }]
    .filter(({ material }) => !(waveSpeed(material) <= FASTEST_PULL))
    .map(({ path, material }) => ({
      path,
      got: `at its steepest, with its branches, so stiff for its mass that a pull travels at ${kilometres(waveSpeed(material))} km/s`,
      expected: `a line in which a pull travels at ${kilometres(FASTEST_PULL)} km/s at most, in the stiffest fibres it does at 12: see to units, and to points of the curve that are too close`,
    }));
}
const kilometres = (speed: number): string => (speed / 1000).toPrecision(3);

function costIssues(problem: Problem, options: ModelOptions | undefined): ProblemIssue[] {
  const cost = estimateCost(problem, options);
  const most = options ? MOST_ELEMENT_STEPS_EVER : MOST_ELEMENT_STEPS;
  if (cost.elementSteps <= most) return [];
  const PATHS = { main: "main", backup: "backup", leash: "ring.mass", anchors: "anchors" } as const;
  const WHY = {
    main: "the main line's stiffness over its mass",
    backup: "the backup's stiffness over its mass",
    leash: "the leash's stiffness over the ring's mass",
    anchors: "the legs' stiffness over the mass of their master point",
  } as const;
  return [
    {
      path: PATHS[cost.governedBy],
      got: `${cost.steps.toPrecision(3)} steps of ${(1e6 * cost.step).toPrecision(3)} µs on ${cost.elements} elements, so short for ${WHY[cost.governedBy]}`,
      expected: `what can be stepped with less than ${(most / cost.elements).toPrecision(2)} steps: a run would take hours`,
    },
  ];
}
