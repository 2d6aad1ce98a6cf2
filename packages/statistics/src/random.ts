/** Seeded random numbers: the same seed gives the same run. */
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";

/** A stream of random numbers. */
export interface Random {
  /** Uniform on [0, 1). */
  readonly uniform: () => number;
  /** Standard normal. */
  readonly normal: () => number;
}

/**
 * xoroshiro128+ (pure-rand), normal deviates by Marsaglia's polar method. `seed`: a whole number, else it throws. Its first numbers
 * would be alike for seeds in a row; so its state is made of the seed by another generator, as D. Blackman and S. Vigna advise
 * (Scrambled linear pseudorandom number generators, ACM Trans. Math. Softw. 47 (2021) 36; from memory).
 */
export function seededRandom(seed: number): Random {
  if (!Number.isInteger(seed)) throw new Error(`a seed is a whole number, got ${seed}`);
  const generator = xoroshiro128plusFromState(stateFrom(seed));
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
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const r = x * x + y * y;
      if (r === 0 || r >= 1) continue;
      const scale = Math.sqrt((-2 * Math.log(r)) / r);
      spare = y * scale;
      return x * scale;
    }
  };
  return { uniform, normal };
}

/** Four words of 32 bits that have nothing in common with those of the next seed: a counter, scrambled by two multiplications. */
function stateFrom(seed: number): number[] {
  let counter = (seed ^ Math.floor(seed / 2 ** 32)) | 0;
  return Array.from({ length: 4 }, () => {
    counter = (counter + 0x9e3779b9) | 0;
    let word = counter ^ (counter >>> 16);
    word = Math.imul(word, 0x21f0aaad);
    word = Math.imul(word ^ (word >>> 15), 0x735a2d97);
    return (word ^ (word >>> 15)) | 0;
  });
}
