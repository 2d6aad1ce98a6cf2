/** The drawing of a plot over time, as data: series and bands change seldom, data change with every zoom. */

export interface PlotSeries {
  readonly stroke: string;
  /** [px] */
  readonly width: number;
  /** Lengths of dash and gap, empty for a full line [px]. */
  readonly dash: readonly number[];
  /** Opacity [-]. */
  readonly alpha: number;
}

export interface PlotDrawing<Fill = string> {
  readonly series: readonly PlotSeries[];
  /** Filled between two columns of the data, the upper one first. */
  readonly bands: readonly { readonly series: readonly [upper: number, lower: number]; readonly fill: Fill }[];
}

export interface PlotData {
  /** Times, then the values of every series; null: nothing to draw there. */
  readonly columns: [times: number[], ...values: (number | null | undefined)[][]];
  /** Upper end of the value axis. */
  readonly top: number;
}
