/** The result of a break test, as an observation of a strength. Any positive unit; a sample keeps to one. */
export type Observation =
  | { readonly kind: "exact"; readonly value: number }
  /** The test stopped, or something else broke: the strength is above (right-censored). */
  | { readonly kind: "above"; readonly value: number }
  /** The piece had broken by this load, and nobody saw when (left-censored). */
  | { readonly kind: "below"; readonly value: number }
  | { readonly kind: "between"; readonly from: number; readonly to: number };

/** A complete sample: every value a breaking load. */
export const exactly = (values: readonly number[]): Observation[] => values.map((value) => ({ kind: "exact", value }));

/** Values of the exact observations. */
export function exactValues(sample: readonly Observation[]): number[] {
  return sample.flatMap((o) => (o.kind === "exact" ? [o.value] : []));
}

/** Whether the sample has no bounds. */
export function isComplete(sample: readonly Observation[]): boolean {
  return sample.every((o) => o.kind === "exact");
}

/** Arithmetic mean, in the unit of the values; NaN for no values. */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, x) => sum + x, 0) / values.length;
}

/** Standard deviation with n − 1; undefined for fewer than two values. */
export function standardDeviation(values: readonly number[]): number | undefined {
  if (values.length < 2) return undefined;
  const m = mean(values);
  return Math.sqrt(values.reduce((sum, x) => sum + (x - m) ** 2, 0) / (values.length - 1));
}

/** Rough place of an observation: its value, the middle of an interval, or its bound. */
export function observationPlace(o: Observation): number {
  return o.kind === "between" ? (o.from + o.to) / 2 : o.value;
}
