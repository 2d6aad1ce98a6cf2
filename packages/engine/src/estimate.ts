/** How far the numbers of a run may be from those of an endlessly fine mesh, from a run of the same problem on another mesh. */
import { type Recording, SIGNALS, type SignalName } from "./recording.ts";

/**
 * Order of convergence that the estimate counts on [-]. The line itself converges with order two; the ring, which is an element
 * or two wide, and elements that go slack and snap taut bring it down to about one in a whole fall (THEORY.md).
 */
const ORDER = 1;
/** Meshes that are nearer to each other than this share say nothing about each other [-]. */
const LEAST_APART = 0.05;

/** ± on the numbers of a run. */
export interface Uncertainty {
  /** Element sizes of the run and of the other one [m]. */
  readonly sizes: readonly [number, number];
  /** On the filtered peak of every signal [N]. */
  readonly peaks: Readonly<Record<SignalName, number>>;
  /** On the walker's drop [m]. */
  readonly drop: number;
  readonly standing: { readonly tension: number; readonly sag: number };
  /** Whether the same parts failed in the same order on both meshes, tapes aside; where not, no ± means much. */
  readonly sameBreaks: boolean;
}

/**
 * Distance of a value from the one on an endlessly fine mesh, from the same on another mesh (Richardson extrapolation) [the
 * value's unit]. `ratio`: element size of the value's mesh over that of the other, finer or coarser one.
 */
export function richardson(value: number, other: number, ratio: number): number {
  if (!(ratio > 0) || Math.abs(ratio - 1) < LEAST_APART)
    throw new RangeError(`two meshes of sizes in the ratio ${ratio} say nothing about each other`);
  return Math.abs((value - other) / (1 - ratio ** -ORDER));
}

/** ± on the numbers of `run`, from a run of the same problem on another mesh, finer or coarser. */
export function uncertaintyOf(run: Recording, other: Recording): Uncertainty {
  const ratio = run.mesh.size / other.mesh.size;
  const of = (read: (recording: Recording) => number) => richardson(read(run), read(other), ratio);
  return {
    sizes: [run.mesh.size, other.mesh.size],
    peaks: Object.fromEntries(
      SIGNALS.map((name) => [name, of(({ peaks }) => peaks[name].cfc60)]),
    ) as Uncertainty["peaks"],
    drop: of(({ walker }) => walker.drop),
    standing: { tension: of(({ standing }) => standing.tension), sag: of(({ standing }) => standing.sag) },
    sameBreaks: sameBreaks(run, other),
  };
}

/**
 * Whether the same parts failed in the same order in both runs; where not, no ± from them means much. Tapes do not count: they
 * are made to part, one soon after another.
 */
export const sameBreaks = (run: Recording, other: Recording): boolean => brokenParts(run) === brokenParts(other);

const brokenParts = ({ events }: Recording): string =>
  events
    .filter(({ kind, part }) => kind === "break" && part !== "tape")
    .map(({ part }) => part)
    .join();
