/**
 * The content of a plot, without size or colours. The drawing and the table are both made from it. Data alone, no functions.
 */

/** Look of a line or a mark: for tests and values by tests, built-in values, bounds, everything else. */
export type Tone = "own" | "builtIn" | "bound" | "ink";

export interface Axis {
  readonly label: string;
  /** In places along the axis, which need not be the quantity itself: probability paper is stretched. */
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

export type PlotPoint = readonly [x: number, y: number];

export interface PlotCurve {
  readonly points: readonly PlotPoint[];
  readonly tone: Tone;
  readonly width: number;
  readonly dash: readonly number[];
  /** Name, written where the curve leaves the picture; absent for a curve that explains itself. */
  readonly label?: string;
}

/**
 * A test: its breaking load, the load that it held or below which it broke, or the loads between which it broke. Of a sweep: a
 * value by its own draws, its interval, and whether a pair of values keeps a limit, may keep it, or does not. Of draws: a
 * single run. Of layouts: one that no other beats, and one that another beats.
 */
export interface Mark {
  readonly kind: "broke" | "atLeast" | "below" | "between" | "keeps" | "open" | "keepsNot" | "run" | "best" | "beaten";
  readonly at: PlotPoint;
  /** The other end of "between". */
  readonly to?: PlotPoint;
}

/** A line across the whole plot at a value of x, named above it. */
export interface PlotRule {
  readonly x: number;
  readonly tone: Tone;
  readonly dash: readonly number[];
  readonly label: string;
}

export interface PlotText {
  readonly at: PlotPoint;
  readonly text: string;
  /** Distance of the words from their place; default: just beside it [px]. */
  readonly off?: number;
}

/** A line of the table: columns that do not apply are absent. */
export interface PlotRow {
  readonly series: string;
  readonly [column: string]: string | number | undefined;
}

export interface Plot {
  readonly figure: "fit" | "residuals" | "retention" | "sweep" | "strip" | "frontier";
  /** The group, the stock or the rig of the plot. */
  readonly of: string;
  readonly title: string;
  /** Sentences that tell how to read the plot. */
  readonly notes: readonly string[];
  readonly x: Axis;
  readonly y: Axis;
  /** The axis along which strength lies: marks of bounds point along it. */
  readonly strength: "x" | "y";
  /** Shaded outlines. */
  readonly bands: readonly (readonly PlotPoint[])[];
  readonly curves: readonly PlotCurve[];
  readonly marks: readonly Mark[];
  readonly rules: readonly PlotRule[];
  /** Stretches of x that are marked along the axis. */
  readonly strips?: readonly { readonly from: number; readonly to: number }[];
  /** Words in the plot, from their left end. */
  readonly texts: readonly PlotText[];
  /** Height of the space between the axes [px]. */
  readonly height: number;
  readonly rows: readonly PlotRow[];
}
