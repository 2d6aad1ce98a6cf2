/** Numbers in tables, where the unit stands in the column's head. */

/** A force [N] in kN with three digits: two decimals under 10 kN, none from 100 kN. */
export const kilonewtons = (force: number) =>
  (force / 1000).toFixed(Math.abs(force) < 9995 ? 2 : Math.abs(force) < 99_950 ? 1 : 0);
/** A length [m] with one decimal. */
export const metres = (length: number) => (Math.abs(length) < 0.05 ? 0 : length).toFixed(1);
/**
 * A margin [-]: two decimals under 10, then whole numbers; nobody needs to know that it is 340. Rounded down, so that
 * 1.996 does not read as 2 where 2 is asked for.
 */
export const margin = (ratio: number) => {
  if (ratio >= 100) return "> 99";
  const step = ratio < 10 ? 100 : 1;
  return (Math.floor(ratio * step + 1e-9) / step).toFixed(ratio < 10 ? 2 : 0);
};
