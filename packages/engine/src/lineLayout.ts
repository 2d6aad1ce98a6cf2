/**
 * How one line lies in the engine's memory, one Float64Array shared by all lines. Every quantity is a column of `pitch`
 * numbers; column c of a line begins at `base + c·pitch`. Node columns hold one entry per node, element columns one per
 * element; element e joins nodes e and e + 1.
 *
 * Columns: positions X Y Z [m], velocities VX VY VZ [m/s], IM inverse mass [1/kg], IL inverse natural length [1/m] (0 in a
 * parted element, which then is slack for ever), R1..R8 branch states r [N], S strength [N], T tension [N] (below zero for
 * one step in which an element gives back what it pulled too long), E strain that the tension is of [-], FX FY FZ element force
 * on its first node [N].
 */
export const COLUMN = {
  X: 0,
  Y: 1,
  Z: 2,
  VX: 3,
  VY: 4,
  VZ: 5,
  IM: 6,
  IL: 7,
  R: 8,
  S: 16,
  T: 17,
  E: 18,
  FX: 19,
  FY: 20,
  FZ: 21,
} as const;
export const COLUMNS = 22;
/** Most Maxwell branches a material may have. */
export const MOST_BRANCHES = 8;

/**
 * What a kernel is told of a line, by numbers in memory: where it lies, its runs (see `RUN`), the step [s]; and what it tells
 * back: the work that stretching took so far [J], and by how much tension exceeds strength in the last step, 0 if nowhere [N].
 * `breakable` is 1 for a line that has a strength, else 0.
 */
export const HEAD = {
  base: 0,
  pitch: 1,
  runs: 2,
  runCount: 3,
  runPitch: 4,
  step: 5,
  breakable: 6,
  work: 7,
  excess: 8,
} as const;
export const HEAD_SIZE = 10;

/** A run of elements of one material, described for the kernels by numbers in memory (see `RUN`). */
export const RUN = {
  first: 0,
  last: 1,
  branches: 2,
  endSlope: 3,
  end: 4,
  cubics: 5,
  stiffnessSum: 6,
  halfLength: 7,
  /** From here: decay[8], stiffness[8], release[8], compliance[8]. */
  decay: 8,
  stiffness: 16,
  release: 24,
  compliance: 32,
  /** (Δt/2h)² of the elements' length h: squared speed of one end about the other → a quarter of the squared angle [s²/m²]. */
  turn: 40,
  /** From here: the cubics, five numbers each. */
  table: 42,
} as const;

/** Numbers a run needs with so many cubics. */
export const runSize = (cubics: number): number => RUN.table + 5 * cubics;
/** Even, so that columns stay aligned for two lanes; one spare for the kernels' look-ahead. */
export const pitchFor = (nodes: number): number => (nodes + 3) & ~1;
