/** How far the numbers of a run may be from those of an endlessly fine mesh, from a run of the same problem on another mesh. */
import { type Recording, SIGNALS, type SignalName } from "../record/recording.ts";

/** A difference between two meshes of more than this share of a value may be chance, and wants a third run [-]. */
const DOUBTFUL_DIFFERENCE = 0.1;
/** Meshes that are nearer to each other than this share say nothing about each other [-]. */
const LEAST_MESH_DIFFERENCE = 0.05;

/** ± on the numbers of a run. */
export interface Uncertainty {
  /** Element sizes of the run and of the other one [m]. */
  readonly sizes: readonly [number, number];
  /** On the filtered peak of every signal [N]. */
  readonly peaks: Readonly<Record<SignalName, number>>;
  /** On the walker's drop [m]. */
  readonly drop: number;
  readonly standing: { readonly tension: number; readonly sag: number };
  /** Whether the same parts failed in the same order in all runs, tapes aside; where not, no ± means much. */
  readonly sameBreaks: boolean;
}

/**
 * Distance of a value from the one on an endlessly fine mesh, from the same on another mesh (Richardson extrapolation at order
 * one) [the value's unit]. `ratio`: element size of the value's mesh over that of the other, finer or coarser one. The line itself
 * converges with order two; the ring, which is an element or two wide, and elements that go slack and snap taut bring it down to
 * about one in a whole fall (THEORY.md).
 */
export function richardson(value: number, other: number, ratio: number): number {
  if (!(ratio > 0) || Math.abs(ratio - 1) < LEAST_MESH_DIFFERENCE)
    throw new RangeError(`two meshes of sizes in the ratio ${ratio} say nothing about each other`);
  return Math.abs((value - other) / (1 - 1 / ratio));
}

/** Whether a third run is needed to tell if two meshes differ in a value because of the mesh, or by chance (see `plusMinus`). */
export const doubtful = (value: number, other: number): boolean =>
  Math.abs(value - other) > DOUBTFUL_DIFFERENCE * Math.abs(value);

/**
 * ± on a value from the same on another mesh, and on the same mesh after a change that is too small to matter (`twin`) [the
 * value's unit]. What comes of chance does not shrink with the mesh and must not be extrapolated: where the twin is half as far off
 * as the other mesh, the largest difference among the three counts; else Richardson's distance, at least the twin's.
 */
export function plusMinus(value: number, other: number, ratio: number, twin?: number): number {
  const mesh = richardson(value, other, ratio);
  if (twin === undefined) return mesh;
  const [apart, chance] = [Math.abs(value - other), Math.abs(value - twin)];
  return 2 * chance < apart ? Math.max(mesh, chance) : Math.max(apart, chance, Math.abs(twin - other));
}

/**
 * ± on the numbers of `run`, from a run of the same problem on another mesh, finer or coarser, and from one on the same mesh after
 * a change that is too small to matter, where it was made.
 */
export function uncertaintyOf(run: Recording, other: Recording, twin?: Recording): Uncertainty {
  const ratio = run.mesh.size / other.mesh.size;
  const of = (read: (recording: Recording) => number) => plusMinus(read(run), read(other), ratio, twin && read(twin));
  return {
    sizes: [run.mesh.size, other.mesh.size],
    peaks: Object.fromEntries(
      SIGNALS.map((name) => [name, of(({ peaks }) => peaks[name].cfc60)]),
    ) as Uncertainty["peaks"],
    drop: of(({ walker }) => walker.drop),
    standing: { tension: of(({ standing }) => standing.tension), sag: of(({ standing }) => standing.sag) },
    sameBreaks: sameBreaks(run, other) && (twin === undefined || sameBreaks(run, twin)),
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
