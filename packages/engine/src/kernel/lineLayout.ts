/**
 * How one line lies in the engine's memory, one Float64Array shared by all lines. Every quantity is a column of `pitch`
 * numbers; column c of a line begins at `base + c·pitch`. Node columns hold one entry per node, element columns one per
 * element; element e joins nodes e and e + 1.
 *
 * Columns: positions X Y Z [m], velocities VX VY VZ [m/s], IM inverse mass [1/kg], IL inverse natural length [1/m] (0 in a
 * parted element, which then is slack for ever), R1..R8 branch states r [N], S strength [N], T tension [N] (below zero for
 * one step in which an element gives back what it pulled too long), E strain that the tension is of [-], P pull of the
 * tension per length of the element, T over the distance of its nodes [N/m], H half of the element's natural length [m], Q (Δt/2h)² of
 * its natural length h: squared speed of one end about the other → a quarter of the squared angle [s²/m²]. N and the column
 * after it are the vector kernel's own, for what one of its loops tells the next.
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
  P: 19,
  H: 20,
  Q: 21,
  N: 22,
} as const;
export const COLUMNS = 24;
/** Most Maxwell branches a material may have. */
export const MOST_BRANCHES = 8;

/**
 * What a kernel is told of a line, by numbers in memory: where it lies, its runs (see `RUN`), the step [s]; and what it tells
 * back: the work that stretching took so far [J], by how much tension exceeds strength in the last step, 0 if nowhere [N], and
 * the forces of the first and the last element, each on its first node, xyz [N]. `breakable` is 1 for a line that has a
 * strength, else 0; `next` is where the head of the line lies that is stepped with it, 0 for none.
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
  firstPull: 9,
  lastPull: 12,
  next: 15,
} as const;
export const HEAD_SIZE = 16;

/** A run of elements of one material, of whatever lengths, described for the kernels by numbers in memory. */
export const RUN = {
  first: 0,
  last: 1,
  branches: 2,
  endSlope: 3,
  end: 4,
  cubics: 5,
  stiffnessSum: 6,
  /** From here: decay[8], stiffness[8], release[8], compliance[8]. */
  decay: 8,
  stiffness: 16,
  release: 24,
  compliance: 32,
  /** 1, ½ and the least length that a pull is divided by [m], which the vector kernel reads quicker than it makes them. */
  one: 40,
  half: 41,
  tiny: 42,
  /** From here: the cubics, five numbers each. */
  table: 44,
} as const;

/**
 * Rows of a line's tensions on their way through the CFC 60 filter (see `elementPeaks.ts`), described for the kernels by numbers
 * in memory: where the tensions lie, how many there are to a row (even), how many rows are kept (two blocks of as many), how far
 * a new row lies on the way from the reading before to the present one [-], the filter's coefficients; and behind them, in columns
 * of a row's length: the reading before, two rows of what went into the filter, the least and the largest that came out of it
 * in either block, and the rows that came out of it.
 */
export const ROWS = {
  tensions: 0,
  count: 1,
  places: 2,
  share: 3,
  a0: 4,
  a1: 5,
  b1: 6,
  b2: 7,
  /** Where the rows of the line lie whose row is taken together with this one; 0: no other line. */
  next: 8,
  /** From here, in columns: before, x[2], low[2], high[2], rows[places]. */
  columns: 10,
} as const;
export const ROWS_COLUMN = { before: 0, x: 1, low: 3, high: 5, rows: 7 } as const;

/** Keeps the pull of an element of no length finite; far below any real length [m]. */
export const TINY = 1e-150;

/** Numbers a run needs with so many cubics. */
export const runSize = (cubics: number): number => RUN.table + 5 * cubics;
/** Even, so that columns stay aligned for two lanes; one spare for the kernels' look-ahead. */
export const pitchFor = (nodes: number): number => (nodes + 3) & ~1;
