/** Seeded random numbers: the same seed gives the same run. */
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** A stream of random numbers. */
export interface Random {
  /** Uniform on [0, 1). */
  readonly uniform: () => number;
  /** Standard normal. */
  readonly normal: () => number;
}

/** xoroshiro128+ (pure-rand), normal deviates by Marsaglia's polar method. `seed`: a whole number, else it throws. */
export function seededRandom(seed: number): Random {
  if (!Number.isInteger(seed)) throw new Error(`a seed is a whole number, got ${seed}`);
  const generator = xoroshiro128plus(seed);
  const uniform = () => uniformFloat64(generator);
  let spare: number | undefined;
  /** Marsaglia's polar method: two at a time. */
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const [x, y] = [2 * uniform() - 1, 2 * uniform() - 1];
      const r = x * x + y * y;
      if (r === 0 || r >= 1) continue;
      const scale = Math.sqrt((-2 * Math.log(r)) / r);
      spare = y * scale;
      return x * scale;
    }
  };
  return { uniform, normal };
}
