/** True models of loads and strengths, draws from them, and how often intervals contain the true value. */
import { latinHypercube, normalQuantile, seededRandom, unionChance } from "@secondline/statistics";
import { failureChances, type ReliabilityPart } from "../src/index.ts";
import type { LoadDraws } from "../src/reliability/loadPosterior.ts";

export interface Truth {
  /** For every part, the slope of ln load over each deviate [-]. */
  readonly slopes: readonly (readonly number[])[];
  /** Scatter of ln load by chance, and its correlation between parts [-]. */
  readonly chance: number;
  readonly shared: number;
  /** Scatter of ln strength: each part's own, and of a cause that is common to all [-]. */
  readonly own: readonly number[];
  readonly cause: number;
  /** Margin of every part in its standard deviations [-]. */
  readonly beta: readonly number[];
}

const BLOCK = 8;
const MIDDLE = 8;

export function finished<T>(work: Generator<unknown, T, void>): T {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

const deviation = ({ slopes, chance, own, cause }: Truth, i: number) =>
  Math.hypot(...slopes[i]!, chance, own[i]!, cause);

export function partsOf(truth: Truth): readonly ReliabilityPart[] {
  return truth.beta.map((beta, i) => {
    const id = `part ${i}`;
    const median = Math.exp(MIDDLE + beta * deviation(truth, i));
    return { id, name: id, median, own: truth.own[i]!, causes: { sun: truth.cause } };
  });
}

/** Draws in blocks that are even in every input, as the sampler of scenarios makes them. */
export function drawsOf(
  truth: Truth,
  draws: number,
  seed: number,
): { parts: readonly ReliabilityPart[]; draws: LoadDraws } {
  const random = seededRandom(seed);
  const inputs = truth.slopes[0]!.length;
  const deviates = Array.from({ length: Math.ceil(draws / BLOCK) }, () => latinHypercube(BLOCK, inputs, random))
    .flat()
    .slice(0, draws)
    .map((point) => point.map((at) => normalQuantile((1 + at) / 2)));
  const loads = deviates.map((row) => {
    const common = random.normal();
    return truth.slopes.map((slopes) => {
      const going = slopes.reduce((sum, slope, k) => sum + slope * row[k]!, 0);
      const chance = Math.sqrt(truth.shared) * common + Math.sqrt(1 - truth.shared) * random.normal();
      return Math.exp(MIDDLE + going + truth.chance * chance);
    });
  });
  return { parts: partsOf(truth), draws: { deviates, loads } };
}

/** Of the first part, and of any. */
export function trueChances(truth: Truth): { readonly part: number; readonly any: number } {
  const { slopes, chance, shared, own, cause, beta } = truth;
  const covariance = slopes.map((a, i) =>
    slopes.map((b, j) => {
      const going = a.reduce((sum, slope, k) => sum + slope * b[k]!, 0);
      return going + chance ** 2 * (i === j ? 1 : shared) + cause ** 2 + (i === j ? own[i]! ** 2 : 0);
    }),
  );
  const means = beta.map((one, i) => one * deviation(truth, i));
  const { each, any } = unionChance({ means, covariance }, seededRandom(1), 50_000);
  return { part: each[0]!, any };
}

/** Shares of the rigs whose 95 % intervals contain the truth. */
export function coverage(truth: Truth, draws: number, rigs: number): { readonly part: number; readonly any: number } {
  const exact = trueChances(truth);
  let [part, any] = [0, 0];
  for (let seed = 1; seed <= rigs; seed++) {
    const drawn = drawsOf(truth, draws, 7919 * seed);
    const found = finished(failureChances(drawn.parts, drawn.draws, { seed, samples: 100 }));
    const { fails } = found.parts[0]!;
    if (fails.low <= exact.part && exact.part <= fails.high) part++;
    if (found.anyFails.low <= exact.any && exact.any <= found.anyFails.high) any++;
  }
  return { part: part / rigs, any: any / rigs };
}
