/**
 * Points at which to run a costly function. They fill every input's range evenly, however many inputs there are. M. D. McKay,
 * R. J. Beckman & W. J. Conover, Technometrics 21 (1979) 239–245.
 */
import type { Random } from "./random.ts";

/** Number of random designs from which the one is taken whose inputs correlate least [-]. */
const DESIGN_TRIES = 60;

/** `runs` points with coordinates between −1 and 1, each input once in every one of `runs` equal stretches [-]. */
export function latinHypercube(runs: number, dimension: number, random: Random): number[][] {
  let best: { readonly points: number[][]; readonly worst: number } | undefined;
  for (let i = 0; i < DESIGN_TRIES; i++) {
    const columns = Array.from({ length: dimension }, () => column(runs, random));
    const worst = largestCorrelation(columns);
    if (best && worst >= best.worst) continue;
    best = { points: Array.from({ length: runs }, (_, r) => columns.map((one) => one[r]!)), worst };
  }
  return best!.points;
}

/** One point somewhere in every stretch, in random order. */
function column(runs: number, random: Random): number[] {
  const order = Array.from({ length: runs }, (_, r) => r);
  for (let r = runs - 1; r > 0; r--) {
    const other = Math.floor(random.uniform() * (r + 1));
    [order[r], order[other]] = [order[other]!, order[r]!];
  }
  return order.map((stretch) => (2 * (stretch + random.uniform())) / runs - 1);
}

function largestCorrelation(columns: readonly (readonly number[])[]): number {
  let largest = 0;
  for (let i = 0; i < columns.length; i++) {
    for (let j = i + 1; j < columns.length; j++) {
      largest = Math.max(largest, Math.abs(correlation(columns[i]!, columns[j]!)));
    }
  }
  return largest;
}

/** The mean of a column is close to zero by construction. */
function correlation(a: readonly number[], b: readonly number[]): number {
  let [ab, aa, bb] = [0, 0, 0];
  for (let r = 0; r < a.length; r++) {
    ab += a[r]! * b[r]!;
    aa += a[r]! * a[r]!;
    bb += b[r]! * b[r]!;
  }
  return ab / Math.sqrt(aa * bb);
}
