/** Height of the ground below the line at x, straight between the profile's points; −∞ beside it or without one [m]. */
export function groundHeight(ground: readonly (readonly [x: number, z: number])[] | undefined, x: number): number {
  for (let k = 0; ground && k + 1 < ground.length; k++) {
    const [x0, z0] = ground[k]!;
    const [x1, z1] = ground[k + 1]!;
    if (x >= x0 && x <= x1) return x1 > x0 ? z0 + ((z1 - z0) * (x - x0)) / (x1 - x0) : Math.max(z0, z1);
  }
  return Number.NEGATIVE_INFINITY;
}
