/** Maximum normed residual: points out values that do not belong, and never drops them. */
import { mean, standardDeviation } from "./observation.ts";
import { tQuantile } from "./studentT.ts";

/** The value that stands out most. */
export interface OutlierTest {
  /** Largest |x − mean| / s [-]. */
  readonly residual: number;
  /** Above this the value is pointed out, at 5 % [-]. */
  readonly critical: number;
  /** Index of the value pointed out, if any. */
  readonly index?: number;
}

/** CMH-17-1G section 8.3.3.1. Undefined for fewer than three values or without spread. */
export function maximumNormedResidual(values: readonly number[]): OutlierTest | undefined {
  const s = standardDeviation(values);
  if (values.length < 3 || s === undefined || s === 0) return undefined;
  const m = mean(values);
  const residuals = values.map((x) => Math.abs(x - m) / s);
  const residual = Math.max(...residuals);
  const critical = criticalResidual(values.length);
  return { residual, critical, ...(residual > critical ? { index: residuals.indexOf(residual) } : {}) };
}

/** Critical maximum normed residual at 5 % for n values [-]. */
export function criticalResidual(n: number): number {
  const t = tQuantile(1 - 0.05 / (2 * n), n - 2);
  return ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t));
}
