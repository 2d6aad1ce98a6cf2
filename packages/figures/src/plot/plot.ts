/** What a plot shows, before it has a size or colours: the drawing and the table are both made from it. Data alone, no functions. */

/** How a line or a mark looks: tests and what counts by them, what is built in, bounds, the rest. */
export type Tone = "own" | "builtIn" | "bound" | "ink";

export interface Axis {
  readonly label: string;
  /** In places along the axis, which need not be the quantity itself: probability paper is stretched. */
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

export type Place = readonly [x: number, y: number];

export interface Curve {
  readonly points: readonly Place[];
  readonly tone: Tone;
  readonly width: number;
  readonly dash: readonly number[];
  /** Named where it leaves the picture; absent for one that explains itself. */
  readonly label?: string;
}

/** A test: where it broke, what it held at least or broke below, or between which loads it broke. */
export interface Mark {
  readonly kind: "broke" | "atLeast" | "below" | "between";
  readonly at: Place;
  /** The other end of "between". */
  readonly to?: Place;
}

/** A line across the whole plot at a value of x, named above it. */
export interface Rule {
  readonly x: number;
  readonly tone: Tone;
  readonly dash: readonly number[];
  readonly label: string;
}

/** A line of the table: columns that do not apply are absent. */
export interface PlotRow {
  readonly series: string;
  readonly [column: string]: string | number | undefined;
}

export interface Plot {
  readonly figure: "fit" | "residuals" | "retention";
  /** The group or the stock that it is of. */
  readonly of: string;
  readonly title: string;
  /** How it is to be read, in sentences. */
  readonly notes: readonly string[];
  readonly x: Axis;
  readonly y: Axis;
  /** The axis along which strength lies: marks of bounds point along it. */
  readonly strength: "x" | "y";
  /** Shaded outlines. */
  readonly bands: readonly (readonly Place[])[];
  readonly curves: readonly Curve[];
  readonly marks: readonly Mark[];
  readonly rules: readonly Rule[];
  /** Words in the plot, from their left end. */
  readonly texts: readonly { readonly at: Place; readonly text: string }[];
  /** Height of the space between the axes [px]. */
  readonly height: number;
  readonly rows: readonly PlotRow[];
}
