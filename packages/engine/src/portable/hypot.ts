/** Length of a vector by + × √ alone, so that every JavaScript engine gives the same bits. */

/** √(x² + y² + z²), to 1.5 ulp; for lengths whose squares are neither too large nor too small for a double, as all of ours are. */
export const hypot = (x: number, y: number, z = 0): number => Math.sqrt(x * x + y * y + z * z);
