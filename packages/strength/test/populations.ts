/** Populations of strengths for simulations: their draws, and their known 5 % value, below which a bound must lie. */
import { normalCdf, type Observation, type Random } from "@secondline/statistics";

export type PopulationKind = "normal" | "lognormal" | "weibull";

export interface Population {
  readonly kind: PopulationKind;
  /** Coefficient of variation within a batch, and standard deviation of the logarithm between batches [-]. */
  readonly within: number;
  readonly between: number;
}

/** Standard deviation of ln x of a Weibull distribution of shape 1 [-]. */
const WEIBULL_DEVIATION = Math.PI / Math.sqrt(6);

function drawn({ kind, within }: Population, random: Random): number {
  if (kind === "normal") return 1 + within * random.normal();
  if (kind === "lognormal") return Math.exp(within * random.normal());
  return (-Math.log1p(-random.uniform())) ** (within / WEIBULL_DEVIATION);
}

function cdfWithin({ kind, within }: Population, x: number): number {
  if (kind === "normal") return normalCdf((x - 1) / within);
  if (kind === "lognormal") return normalCdf(Math.log(x) / within);
  return -Math.expm1(-(x ** (WEIBULL_DEVIATION / within)));
}

/** Value that the share p lies below, over all batches. */
export function populationQuantile(population: Population, p: number): number {
  const steps = population.between === 0 ? [0] : Array.from({ length: 81 }, (_, i) => (i - 40) / 5);
  const below = (x: number) => {
    let [sum, total] = [0, 0];
    for (const n of steps) {
      const weight = Math.exp((-n * n) / 2);
      sum += weight * cdfWithin(population, x / Math.exp(population.between * n));
      total += weight;
    }
    return sum / total;
  };
  let [low, high] = [0.05, 2];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (below(middle) < p) low = middle;
    else high = middle;
  }
  return low;
}

export interface Draw {
  readonly sample: readonly Observation[];
  readonly batches: readonly string[];
}

/** `limit`: load at which the machine stops; `batches`: how many, labelled, 1 for none. */
export function draw(population: Population, n: number, batches: number, limit: number, random: Random): Draw {
  const levels = Array.from({ length: batches }, () => Math.exp(population.between * random.normal()));
  const values = Array.from({ length: n }, (_, i) => drawn(population, random) * levels[i % batches]!);
  return {
    sample: values.map((value) => (value > limit ? { kind: "above", value: limit } : { kind: "exact", value })),
    batches: values.map((_, i) => String(i % batches)),
  };
}

export interface Case {
  readonly n: number;
  readonly batches: number;
  readonly between: number;
  /** Share of the strongest parts that the machine does not break [-]. */
  readonly censored: number;
}

/** Shares of the bounds with 75 and 95 % confidence that lie below the true value [-]. */
export function coverage(
  kind: PopulationKind,
  { n, batches, between, censored }: Case,
  within: number,
  bounds: (draw: Draw) => readonly [at75: number, at95: number],
  samples: number,
  random: Random,
): readonly [number, number] {
  const population: Population = { kind, within, between };
  const truth = populationQuantile(population, 0.05);
  const limit = censored > 0 ? populationQuantile(population, 1 - censored) : Number.POSITIVE_INFINITY;
  let [held75, held95] = [0, 0];
  for (let i = 0; i < samples; i++) {
    const [at75, at95] = bounds(draw(population, n, batches, limit, random));
    if (at75 <= truth) held75++;
    if (at95 <= truth) held95++;
  }
  return [held75 / samples, held95 / samples];
}
