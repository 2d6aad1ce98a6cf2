/** Numbers in tables, where the unit stands in the column's head. */

/** A force [N] in kN with three digits: two decimals under 10 kN, none from 100 kN. */
export const kilonewtons = (force: number) =>
  (force / 1000).toFixed(Math.abs(force) < 9995 ? 2 : Math.abs(force) < 99_950 ? 1 : 0);
/** A length [m] with one decimal. */
export const metres = (length: number) => (Math.abs(length) < 0.05 ? 0 : length).toFixed(1);
/** A margin [-]: two decimals under 10, then whole numbers; nobody needs to know that it is 340. */
export const margin = (ratio: number) => (ratio < 9.995 ? ratio.toFixed(2) : ratio < 99.5 ? ratio.toFixed(0) : "> 99");
