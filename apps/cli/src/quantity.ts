/** Numbers in tables, where the unit stands in the column's head. */

/** A force [N] in kN with two decimals under 10 kN, one above. */
export const kilonewtons = (force: number) => (force / 1000).toFixed(Math.abs(force) < 9995 ? 2 : 1);
/** A length [m] with one decimal. */
export const metres = (length: number) => length.toFixed(1);
/** A margin [-]: two decimals under 10, then whole numbers; nobody needs to know that it is 340. */
export const margin = (ratio: number) => (ratio < 9.995 ? ratio.toFixed(2) : ratio < 99.5 ? ratio.toFixed(0) : "> 99");
