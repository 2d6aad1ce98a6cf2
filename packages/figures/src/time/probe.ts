/** A value on the plot at a time, for the dots where the cursor meets the traces; null if there is no value. */
export interface Probe {
  readonly key: string;
  readonly colour: string;
  readonly valueAt: (time: number) => number | null;
}
