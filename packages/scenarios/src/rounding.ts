/** Numbers with a fixed count of decimals that never look better than they are. The small amount keeps 2.3, 22.999… tenths, 2.3. */
const SLACK = 1e-9;

/** A margin: never made to look larger than it is. */
export function fixedDown(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  return (Math.floor(value * scale + SLACK) / scale).toFixed(decimals);
}

/** A load, or what is asked for: never made to look smaller than it is. */
export function fixedUp(value: number, decimals: number): string {
  const scale = 10 ** decimals;
  return (Math.ceil(value * scale - SLACK) / scale).toFixed(decimals);
}
