/** A run with its numerical uncertainty: the same problem on a second mesh of half the element size. */
import type { Problem } from "./problem.ts";
import { type Recording, type RunResult, SIGNALS, type SignalName } from "./recording.ts";
import type { SimulationOptions } from "./simulation.ts";
import { simulate } from "./solve.ts";

/**
 * Order of convergence that the estimate counts on [-]. The line itself converges with order two; the ring, which is an element
 * or two wide, and elements that go slack and snap taut bring it down to about one in a whole fall (THEORY.md).
 */
export const ESTIMATE_ORDER = 1;

/** ± on the numbers of a run: how far they may be from those of an endlessly fine mesh. */
export interface Uncertainty {
  /** Element sizes of the run and of the second one [m]. */
  readonly sizes: readonly [number, number];
  /** On the filtered peak of every signal [N]. */
  readonly peaks: Readonly<Record<SignalName, number>>;
  /** On the walker's drop [m]. */
  readonly drop: number;
  readonly standing: { readonly tension: number; readonly sag: number };
  /** Whether the same parts failed in the same order on both meshes; where not, no ± means much. */
  readonly sameBreaks: boolean;
}

export type EstimatedResult =
  | { readonly ok: true; readonly recording: Recording; readonly uncertainty: Uncertainty }
  | Extract<RunResult, { ok: false }>;

/**
 * Runs a checked problem on its mesh and on one of half the element size. The recording is that of the first. A run that
 * cannot be trusted on either mesh is an error: a number that no second mesh confirms is no number. Takes about five times as
 * long as a plain run.
 */
export function simulateWithEstimate(problem: Problem, options: SimulationOptions = {}): EstimatedResult {
  const first = simulate(problem, options);
  if (!first.ok) return first;
  const { size } = first.recording.mesh;
  const second = simulate(problem, { ...options, size: size / 2 });
  if (!second.ok) return { ...second, message: `on a mesh of half the size: ${second.message}` };
  return { ok: true, recording: first.recording, uncertainty: uncertaintyOf(first.recording, second.recording) };
}

/** ± on the numbers of `first`, from a run of the same problem on a finer mesh (Richardson extrapolation). */
export function uncertaintyOf(first: Recording, finer: Recording): Uncertainty {
  const ratio = first.mesh.size / finer.mesh.size;
  if (!(ratio > 1.05)) throw new RangeError(`the second mesh must be finer, got sizes in the ratio ${ratio}`);
  const away = 1 / (1 - ratio ** -ESTIMATE_ORDER);
  const of = (read: (recording: Recording) => number) => away * Math.abs(read(first) - read(finer));
  return {
    sizes: [first.mesh.size, finer.mesh.size],
    peaks: Object.fromEntries(
      SIGNALS.map((name) => [name, of(({ peaks }) => peaks[name].cfc60)]),
    ) as Uncertainty["peaks"],
    drop: of(({ walker }) => walker.drop),
    standing: { tension: of(({ standing }) => standing.tension), sag: of(({ standing }) => standing.sag) },
    sameBreaks: brokenParts(first) === brokenParts(finer),
  };
}

const brokenParts = ({ events }: Recording): string =>
  events
    .filter(({ kind }) => kind === "break")
    .map(({ part }) => part)
    .join();
