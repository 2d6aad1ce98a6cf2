/** Plain Monte Carlo: how likely each part fails, and how likely it is the first, with confidence intervals. */
import { clopperPearson } from "../statistics/orderStatistics.ts";
import { normalSpace, type ReliabilityModel } from "./model.ts";
import { normalVector, seededRandom } from "./random.ts";

/** A probability with its two-sided 95 % interval from the number of runs alone. */
export interface Share {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface PartReliability {
  readonly id: string;
  readonly name: string;
  /** Probability that the load exceeds its strength. */
  readonly fails: Share;
  /** Probability that it has the least margin of all parts: that it would be first if the loads grew. */
  readonly first: Share;
}

export interface FirstToFail {
  readonly runs: number;
  readonly seed: number;
  /** Probability that any part fails. */
  readonly anyFails: Share;
  /** In the order of the model's parts. */
  readonly parts: readonly PartReliability[];
  /** The likeliest to be first. */
  readonly likeliest: PartReliability;
  /** "leash is first to fail with 83 % (68 to 93 %)". */
  readonly sentence: string;
}

const CONFIDENCE = 0.95;

export function firstToFail(
  model: ReliabilityModel,
  options: { readonly runs: number; readonly seed: number },
): FirstToFail {
  if (model.parts.length === 0) throw new Error("a reliability model needs a part");
  const { runs, seed } = options;
  const space = normalSpace(model);
  const random = seededRandom(seed);
  const fails = new Uint32Array(model.parts.length);
  const first = new Uint32Array(model.parts.length);
  let any = 0;
  for (let run = 0; run < runs; run++) {
    const margins = space.logMargins(normalVector(random, space.dimension));
    let least = 0;
    for (let i = 0; i < margins.length; i++) {
      if (margins[i]! < 0) fails[i]!++;
      if (margins[i]! < margins[least]!) least = i;
    }
    first[least]!++;
    if (margins[least]! < 0) any++;
  }
  const share = (hits: number): Share => {
    const [low, high] = clopperPearson(hits, runs, CONFIDENCE);
    return { value: hits / runs, low, high };
  };
  const parts = model.parts.map(({ id, name }, i) => ({ id, name, fails: share(fails[i]!), first: share(first[i]!) }));
  const likeliest = parts.reduce((most, part) => (part.first.value > most.first.value ? part : most));
  const percent = (x: number) => Math.round(100 * x);
  const { value, low, high } = likeliest.first;
  const sentence = `${likeliest.name} is first to fail with ${percent(value)} % (${percent(low)} to ${percent(high)} %)`;
  return { runs, seed, anyFails: share(any), parts, likeliest, sentence };
}
