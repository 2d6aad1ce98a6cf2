/** A value on the plot at a time, for the dots where the cursor meets the traces; null: nothing there. */
export interface Probe {
  readonly key: string;
  readonly colour: string;
  readonly valueAt: (time: number) => number | null;
}
