import { quantity } from "@secondline/words";

/** Decimals that tell apart times which are a few pixels apart when `span` seconds fill the plot. */
export function secondsDecimals(span: number): number {
  if (span > 1) return 2;
  return span > 0.1 ? 3 : 4;
}

/** A time on the axis, with as many decimals as tell its ticks apart. */
export function axisSeconds(time: number, ticks: readonly number[]): string {
  const step = ticks.length > 1 ? ticks[1]! - ticks[0]! : 1;
  const decimals = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  return `${quantity.rounded(time, Math.min(decimals, 5), "nearest")}\u00a0s`;
}
