/** Decimals that tell apart times which are a few pixels apart when `span` seconds fill the plot. */
export function secondsDecimals(span: number): number {
  if (span > 1) return 2;
  return span > 0.1 ? 3 : 4;
}
